import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostOnARun } from '../../../../../src/calc/runs/search/bounds/least-chains';
import { PathCover } from '../../../../../src/calc/runs/search/path-cover';
import { fewestSets } from '../../../../../src/calc/runs/search/sets/fewest-sets';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

const singles = (size: number) => ({
  order: Int32Array.from(Array(size).keys()),
  start: Int32Array.from(Array(size + 1).keys()),
});
const aim = { highLeast: 0, enough: 0, states: 100_000 };

test('fewestSets finds and proves what trying all finds, and its chains fit', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      const answer = fewestSets(region, mostOnARun(region), singles(region.size), aim)!;
      const cover = new PathCover(region, answer.chains);
      const best = leastByTrying(grid, limits);
      expect({ high: cover.high, ports: cover.chains, overloaded: cover.overloaded }).toEqual({
        ...best,
        overloaded: 0,
      });
      expect([answer.high, answer.count, answer.least]).toEqual([best.high, best.ports, best.ports]);
      expect(answer.proved).toBe(true);
      expect([...answer.chains.order].sort((a, b) => a - b)).toEqual([...singles(region.size).order]);
    }),
    { numRuns: 60 },
  );
});

test('fewestSets covers 14 x 13 panels, five to a port, by 182 / 5 = 37 runs and proves it, from single panels', () => {
  const { region } = makeReady(block(14, 13), aPort(5, 'panels', 1e6));
  const answer = fewestSets(region, mostOnARun(region), singles(182), { ...aim, states: 500_000 })!;
  expect([answer.count, answer.least, answer.proved]).toEqual([37, 37, true]);
});

test('fewestSets stops where runs are few enough, and says what it spent', () => {
  const { region } = makeReady(block(14, 13), aPort(5, 'panels', 1e6));
  const answer = fewestSets(region, mostOnARun(region), singles(182), { ...aim, enough: 60, states: 1_000_000 })!;
  expect(answer.count).toBeLessThanOrEqual(60);
  // Not on to the least, which is 37.
  expect(answer.count).toBeGreaterThan(45);
  expect(answer.states).toBeGreaterThan(0);
});

test('fewestSets gives null where runs are so long that sets are too many to list', () => {
  const { region } = makeReady(block(12, 12), aPort(14));
  expect(fewestSets(region, mostOnARun(region), singles(144), aim)).toBeNull();
});

test('fewestSets is never worse than what it begins with, however few states it may look at', () => {
  const { region } = makeReady(block(8, 3), aPort(3));
  const columns = { order: singles(24).order, start: Int32Array.from([0, 3, 6, 9, 12, 15, 18, 21, 24]) };
  const answer = fewestSets(region, mostOnARun(region), columns, { ...aim, states: 0 })!;
  expect([answer.high, answer.count]).toEqual([0, 8]);
});
