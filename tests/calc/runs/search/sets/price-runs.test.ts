import fc from 'fast-check';
import { expect, test } from 'vitest';
import { priceRuns } from '../../../../../src/calc/runs/search/sets/price-runs';
import { listRunSets } from '../../../../../src/calc/runs/search/sets/run-sets';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

const runsAlone = { perRun: 1, perHigh: 0, highMost: null };
const far = { enough: Number.POSITIVE_INFINITY };

test('priceRuns gives a bound that no cover is below, by ends above reach and by runs with no more of them', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      const sets = listRunSets(region, 1e6)!;
      const best = leastByTrying(grid, limits);
      const byHigh = { perRun: 0, perHigh: 1, highMost: null };
      expect(priceRuns(sets, 0.1, byHigh, { target: best.high, ...far }).bound).toBeLessThan(best.high + 1e-6);
      const byRuns = { perRun: 1, perHigh: 1, highMost: best.high };
      expect(priceRuns(sets, 0.2, byRuns, { target: best.ports, ...far }).bound).toBeLessThan(best.ports + 1e-6);
      // Aimed too high it is still a bound.
      expect(priceRuns(sets, 0.2, byRuns, { target: best.ports + 3, ...far }).bound).toBeLessThan(best.ports + 1e-6);
    }),
    { numRuns: 60 },
  );
});

test('priceRuns prices cells so that no set is worth more than it costs, and a cover costs the bound and what its sets are dear by', () => {
  const { region } = makeReady(block(5, 3), aPort(4));
  const sets = listRunSets(region, 1e6)!;
  const { bound, dear } = priceRuns(sets, 0.2, runsAlone, { target: 4, ...far });
  for (const each of dear) expect(each).toBeGreaterThan(-1e-9);
  const singles = Array.from({ length: sets.count }, (_, set) => set).filter(
    (set) => sets.start[set + 1]! - sets.start[set]! === 1,
  );
  expect(singles.reduce((sum, set) => sum + dear[set]!, bound)).toBeCloseTo(15, 6);
});

test('priceRuns sees what counting panels does not: three dead ends beside each other need a run each', () => {
  // Rows 1 of columns 1, 3 and 5 stand on a row of five below: 8 panels fit one port, but a run has two ends.
  const comb = block(5, 2, (place) => place % 2 === 0 || place % 4 === 1);
  const { region } = makeReady(comb, aPort(8));
  const { bound } = priceRuns(listRunSets(region, 1e6)!, 0.2, runsAlone, { target: 2, enough: 1.01 });
  expect(Math.ceil(bound)).toBe(2);
});

test('priceRuns ends at a bound that is enough', () => {
  const { region } = makeReady(block(4, 4), aPort(4));
  const sets = listRunSets(region, 1e6)!;
  const { bound } = priceRuns(sets, 0.1, runsAlone, { target: 4, enough: 2 });
  expect(bound).toBeGreaterThanOrEqual(2);
  expect(bound).toBeLessThan(4);
});
