import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fewestPorts, knownWirings, searchFewestPorts } from '../../../../src/calc/runs/search/fewest-ports';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';
import { leastByTrying } from './least-by-trying';
import { smallZone } from './small-zones';

test('fewestPorts: fewest entries above reach, then fewest ports, as trying all finds them', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      const { entriesOutOfReach: high, ports } = fewestPorts(grid, limits, 1_000_000);
      expect({ high, ports }).toEqual(leastByTrying(grid, limits));
    }),
    { numRuns: 40 },
  );
});

test('fewestPorts: every entry is in reach whenever a wiring with all in reach exists', () => {
  let exist = 0;
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0 && leastByTrying(grid, limits).high === 0);
      exist++;
      expect(fewestPorts(grid, limits, 1_000_000).entriesOutOfReach).toBe(0);
    }),
    { numRuns: 40 },
  );
  expect(exist).toBeGreaterThan(20);
});

test('fewestPorts: more headroom never needs fewer ports', () => {
  fc.assert(
    fc.property(smallZone, fc.integer({ min: 1, max: 40 }), ({ grid, limits, region }, percent) => {
      fc.pre(region.size > 0);
      const tight = { ...limits, usablePixels: Math.floor((limits.usablePixels * (100 - percent)) / 100) };
      // Where a panel alone is too much for a port it is wired all the same, and nothing can be compared.
      fc.pre(tight.usablePixels >= 216 * 216);
      const [roomy, less] = [limits, tight].map((each) => fewestPorts(grid, each, 500_000));
      expect(less!.entriesOutOfReach).toBeGreaterThanOrEqual(roomy!.entriesOutOfReach);
      if (less!.entriesOutOfReach === roomy!.entriesOutOfReach)
        expect(less!.ports).toBeGreaterThanOrEqual(roomy!.ports);
    }),
    { numRuns: 40 },
  );
});

test('searchFewestPorts stops at what is enough, and gives a panel too large for a port one of its own', () => {
  const grid = block(4, 4);
  grid.pixelWidth[15] = 4320;
  const zone = makeReady(grid, aPort(4));
  const known = knownWirings(zone);
  const { wiring, least } = searchFewestPorts(zone, known, { steps: 200_000, enough: 0 });
  // 15 panels on ports of four, and one alone.
  expect([wiring.ports, least, [...wiring.tooLarge]]).toEqual([5, 5, [15]]);
  const enough = searchFewestPorts(zone, known, { steps: 200_000, enough: 16 }).wiring;
  expect(enough.ports).toBe(Math.min(...known.map(({ ports }) => ports)));
});
