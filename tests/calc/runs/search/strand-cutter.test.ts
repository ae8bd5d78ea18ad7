import fc from 'fast-check';
import { expect, test } from 'vitest';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { StrandCutter } from '../../../../src/calc/runs/search/strand-cutter';
import { allCuts } from './all-cuts';
import { block } from './block-of-panels';

const noCuts = () => ({ start: new Int32Array(40), pixels: new Float64Array(40), count: 0 });

/** Cuts a region of 3 x 4 panels, `sizes` pixels wide row by row, along one strand through the cells given. */
function cut(strand: readonly number[], sizes: readonly number[], limits: Parameters<typeof regionOf>[1]) {
  const grid = block(3, 4);
  for (let place = 0; place < 12; place++) grid.pixelWidth[place] = sizes[place % 4]!;
  const region = regionOf(grid, limits, Int32Array.from(grid.present.keys()));
  const full = noCuts();
  const even = noCuts();
  const cells = Int32Array.from(strand);
  const strands = { cells, start: Int32Array.from([0, strand.length]), count: 1 };
  const cutter = new StrandCutter(region);
  const differ = cutter.cutAll(strands, full, even);
  const endsOf = ({ start, count }: typeof full) => Array.from(start.subarray(1, count + 1));
  const loadsOf = ({ pixels, count }: typeof full) => Array.from(pixels.subarray(0, count));
  const loads = [loadsOf(full), loadsOf(even)];
  return { region, differ, full: endsOf(full), even: endsOf(even), loads, highOf: cutter.highOf(strands, even) };
}

const panels = 216 * 216;

test('StrandCutter cuts ten panels of one size for a port of four: 4, 4, 2 full, and 3, 3, 4 even', () => {
  const limits = { usablePixels: 4 * panels, panelsMost: 100, counting: 'panels' as const, reachMm: 9000 };
  const { differ, full, even } = cut([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], [216, 216, 216, 216], limits);
  expect({ differ, full, even }).toEqual({ differ: true, full: [4, 8, 10], even: [3, 6, 10] });
});

test('StrandCutter leaves a strand whole that a port takes', () => {
  const limits = { usablePixels: 4 * panels, panelsMost: 100, counting: 'panels' as const, reachMm: 0 };
  expect(cut([0, 1, 2, 3], [216, 216, 216, 216], limits)).toMatchObject({ differ: false, full: [4], even: [4] });
});

test('StrandCutter cuts a strand that a port takes where that brings an end within reach', () => {
  // Rows 1, 0, 0, 3 of four, the lowest row alone in reach: whole, both ends stand too high; cut midway, each half has one that does not.
  const limits = { usablePixels: 8 * panels, panelsMost: 5, counting: 'panels' as const, reachMm: 0 };
  expect(cut([1, 0, 4, 7], [216, 216, 216, 216], limits)).toMatchObject({ even: [2, 4], highOf: 0 });
});

test('StrandCutter finds what trying all cuts finds: fewest ends above reach, fewest runs, least sum of squares', () => {
  const shuffled = fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], { minLength: 1 });
  const sizes = fc.array(fc.constantFrom(108, 216, 324), { minLength: 4, maxLength: 4 });
  const alike = fc.constant([216, 216, 216, 216]);
  const limits = fc.record({
    usablePixels: fc.integer({ min: 2, max: 9 }).map((count) => count * panels),
    panelsMost: fc.constantFrom(3, 5, 100),
    counting: fc.constantFrom('panels' as const, 'rectangle' as const),
    // Rows stand 0, 500, 1000 and 1500 mm above the floor.
    reachMm: fc.constantFrom(0, 600, 9000),
    lastObeysReach: fc.boolean(),
  });
  fc.assert(
    fc.property(shuffled, fc.oneof(sizes, alike), limits, (strand, wide, within) => {
      const { region, full, even, loads, highOf } = cut(strand, wide, within);
      const all = allCuts(region, strand);
      const high = Math.min(...all.map((each) => each.high));
      const least = all.filter((each) => each.high === high);
      const runs = Math.min(...least.map(({ ends }) => ends.length));
      const fewest = least.filter(({ ends }) => ends.length === runs);
      const squares = Math.min(...fewest.map((each) => each.squares));
      expect(fewest.find(({ ends }) => `${ends}` === `${even}`)?.squares).toBe(squares);
      // Full: no first run could be longer, then no second one.
      const longest = fewest.reduce((a, b) => (isLonger(b.ends, a.ends) ? b : a));
      expect(full).toEqual(longest.ends);
      expect(highOf).toBe(high);
      const loadsOf = (ends: readonly number[]) => all.find((each) => `${each.ends}` === `${ends}`)?.loads;
      expect(loads).toEqual([loadsOf(full), loadsOf(even)]);
    }),
    { numRuns: 300 },
  );
});

function isLonger(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((end, i) => end !== other[i]);
  return at >= 0 && one[at]! > other[at]!;
}
