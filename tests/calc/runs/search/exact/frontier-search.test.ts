import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostOnARun } from '../../../../../src/calc/runs/search/bounds/least-chains';
import { searchFrontier } from '../../../../../src/calc/runs/search/exact/frontier-search';
import { PathCover } from '../../../../../src/calc/runs/search/path-cover';
import { createRandomBits } from '../../../../../src/calc/runs/search/random-bits';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { randomCase } from '../random-case';
import { smallZone } from '../small-zones';
import { gridOfCase, limitsOfCase } from '../zone-case';

const anything = { high: 1000, chains: 1000, steps: 1e9 };

test('searchFrontier finds what trying all finds, and proves that nothing is better', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      const best = leastByTrying(grid, limits);
      const outcome = searchFrontier(region, mostOnARun(region), anything);
      if (outcome.kind !== 'found') throw new Error(outcome.kind);
      const cover = new PathCover(region, outcome.chains);
      expect({ high: cover.high, ports: cover.chains, overloaded: cover.overloaded }).toEqual({
        ...best,
        overloaded: 0,
      });
      const better = { high: best.high, chains: best.ports, steps: 1e9 };
      expect(searchFrontier(region, mostOnARun(region), better).kind).toBe('none');
    }),
    { numRuns: 60 },
  );
});

test('searchFrontier finds what trying all finds where both ends obey reach and panels are of several sizes', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e9 }), (seed) => {
      const zone = randomCase(createRandomBits(seed), { columns: [2, 4], rows: [2, 3], panelsAPort: [1, 6] });
      const grid = gridOfCase(zone);
      const limits = { ...limitsOfCase(zone), lastObeysReach: zone.returns };
      const { region, tooLarge } = makeReady(grid, limits);
      fc.pre(region.size > 0 && tooLarge.length === 0);
      const best = leastByTrying(grid, limits);
      const better = { high: best.high, chains: best.ports, steps: 1e9 };
      expect(searchFrontier(region, mostOnARun(region), better).kind).toBe('none');
      const outcome = searchFrontier(region, mostOnARun(region), { ...better, chains: best.ports + 1 });
      if (outcome.kind !== 'found') throw new Error(outcome.kind);
      const { high, chains, overloaded } = new PathCover(region, outcome.chains);
      expect({ high, ports: chains, overloaded }).toEqual({ ...best, overloaded: 0 });
    }),
    { numRuns: 150 },
  );
});

test('searchFrontier stops where its steps are used up, and finds nothing in nothing', () => {
  const { region } = makeReady(block(5, 5), aPort(6));
  expect(searchFrontier(region, mostOnARun(region), { ...anything, steps: 50 }).kind).toBe('out of steps');
  const empty = makeReady(
    block(2, 2, () => false),
    aPort(6),
  ).region;
  expect(searchFrontier(empty, { pixels: 0, panels: 0 }, anything)).toEqual({ kind: 'none', steps: 0 });
});
