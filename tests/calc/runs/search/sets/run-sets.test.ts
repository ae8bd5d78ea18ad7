import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createRandomBits } from '../../../../../src/calc/runs/search/random-bits';
import { listRunSets } from '../../../../../src/calc/runs/search/sets/run-sets';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { holdings } from '../least-by-program';
import { randomCase } from '../random-case';
import { gridOfCase, limitsOfCase } from '../zone-case';

test('listRunSets lists what the integer program is given: every set that a run can hold, with its fewest ends above reach', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e9 }), (seed) => {
      const zone = randomCase(createRandomBits(seed), { columns: [2, 5], rows: [2, 4], panelsAPort: [1, 7] });
      const { grid, limits, region, tooLarge } = makeReady(gridOfCase(zone), limitsOfCase(zone));
      const { count, start, cells, high, firstAt } = listRunSets(region, 1e6)!;
      const found = Array.from({ length: count }, (_, set) => {
        const own = cells.subarray(start[set], start[set + 1]);
        const lowest = Math.min(...own);
        expect(set >= firstAt[lowest]! && set < firstAt[lowest + 1]!).toBe(true);
        const places = Array.from(own, (cell) => region.places[cell]!);
        return `${places.sort((a, b) => a - b)}: ${high[set]}`;
      });
      const expected = holdings(grid, limits)
        .filter(({ places }) => !tooLarge.includes(places[0]!))
        .map((set) => {
          const ends = limits.lastObeysReach === true ? set.high : Math.min(set.high, 1);
          return `${set.places.toSorted((a, b) => a - b)}: ${ends}`;
        });
      expect(found.sort()).toEqual(expected.sort());
    }),
    { numRuns: 60 },
  );
});

test('listRunSets keeps the cells of a set in the order of a chain that leaves fewest ends above reach', () => {
  // Two columns of three, reach up to the lowest row: four panels round the top come up and go down again.
  const { region } = makeReady(block(2, 3), { ...aPort(6, 'panels', 100), lastObeysReach: true });
  const { start, cells, high, count } = listRunSets(region, 1000)!;
  const whole = Array.from({ length: count }, (_, set) => set).find((set) => start[set + 1]! - start[set]! === 6)!;
  expect(high[whole]).toBe(0);
  expect([...cells.subarray(start[whole], start[whole + 1])]).toEqual([0, 1, 2, 5, 4, 3]);
});

test('listRunSets gives null where there are more chains than allowed', () => {
  const { region } = makeReady(block(4, 4), aPort(4));
  // 16 of one panel, 2 x 24 of two, and so on.
  expect(listRunSets(region, 16)).toBeNull();
  expect(listRunSets(region, 1e6)).not.toBeNull();
});
