import fc from 'fast-check';
import { expect, test } from 'vitest';
import { InReachCutter } from '../../../../src/calc/runs/search/in-reach-cutter';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { allCuts } from './all-cuts';
import { block } from './block-of-panels';

function cut(strand: readonly number[], usablePixels: number, counting: 'panels' | 'rectangle', panelsMost: number) {
  const grid = block(4, 3);
  // Rows of 216, 108 and 216 pixels, so that loads do not come in whole panels.
  for (let place = 1; place < 12; place += 3) grid.pixelHeight[place] = 108;
  const region = regionOf(
    grid,
    { usablePixels, panelsMost, counting, reachMm: 9000 },
    Int32Array.from(Array(12).keys()),
  );
  const [full, even] = [0, 0].map(() => ({ start: new Int32Array(40), pixels: new Float64Array(40), count: 0 }));
  // It may lie anywhere on a list of strands, which all in all hold each cell once at most.
  const before = [0, 0, 0].slice(0, strand.length % 3);
  const cells = Int32Array.from([...before, ...strand]);
  new InReachCutter(region).cut(cells, before.length, cells.length, full!, even!);
  const endsOf = ({ start, count }: { start: Int32Array; count: number }) =>
    Array.from(start.subarray(1, count + 1), (end) => end - before.length);
  const loads = [full!, even!].map(({ pixels, count }) => Array.from(pixels.subarray(0, count)));
  return { region, full: endsOf(full!), even: endsOf(even!), loads };
}

test('InReachCutter cuts six panels in a row, each 1 x 1, where a rectangle of four counts: 4 and 2 full, 3 and 3 even', () => {
  const grid = block(6, 1);
  const limits = { usablePixels: 4 * 216 * 216, panelsMost: 100, counting: 'rectangle' as const, reachMm: 9000 };
  const region = regionOf(grid, limits, Int32Array.from([0, 1, 2, 3, 4, 5]));
  const full = { start: new Int32Array(7), pixels: new Float64Array(7), count: 0 };
  const even = { start: new Int32Array(7), pixels: new Float64Array(7), count: 0 };
  new InReachCutter(region).cut(Int32Array.from([0, 1, 2, 3, 4, 5]), 0, 6, full, even);
  expect([full.count, ...full.start.subarray(1, 3)]).toEqual([2, 4, 6]);
  expect([even.count, ...even.start.subarray(1, 3)]).toEqual([2, 3, 6]);
});

test('InReachCutter finds what trying all cuts finds: fewest runs; full the longest first, even the least sum of squares', () => {
  const strand = fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], { minLength: 1, maxLength: 10 });
  const usable = fc.integer({ min: 2, max: 16 }).map((halves) => halves * 216 * 108);
  fc.assert(
    fc.property(
      strand,
      usable,
      fc.constantFrom('panels' as const, 'rectangle' as const),
      fc.constantFrom(3, 7),
      (cells, pixels, counting, most) => {
        const { region, full, even, loads } = cut(cells, pixels, counting, most);
        const all = allCuts(region, cells);
        const runs = Math.min(...all.map(({ ends }) => ends.length));
        const fewest = all.filter(({ ends }) => ends.length === runs);
        const squares = Math.min(...fewest.map((each) => each.squares));
        expect(fewest.find(({ ends }) => `${ends}` === `${even}`)?.squares).toBe(squares);
        const loadsOf = (ends: readonly number[]) => fewest.find((each) => `${each.ends}` === `${ends}`)?.loads;
        expect(loads).toEqual([loadsOf(full), loadsOf(even)]);
        for (const { ends } of fewest) {
          for (const [i, end] of ends.entries()) expect(full[i]).toBeGreaterThanOrEqual(end);
        }
      },
    ),
    { numRuns: 300 },
  );
});
