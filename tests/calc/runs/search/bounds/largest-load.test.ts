import fc from 'fast-check';
import { expect, test } from 'vitest';
import { largestLoad } from '../../../../../src/calc/runs/search/bounds/largest-load';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { block } from '../block-of-panels';

function loadOf(heights: readonly number[], usablePixels: number): number {
  const grid = block(heights.length, 1);
  heights.forEach((height, place) => {
    grid.pixelWidth[place] = 1;
    grid.pixelHeight[place] = height;
  });
  const limits = { usablePixels, panelsMost: 1000, counting: 'panels' as const, reachMm: 2100 };
  return largestLoad(regionOf(grid, limits, Int32Array.from(heights.keys())));
}

test('largestLoad of ten equal panels of 46,656 on 480,000 is ten of them, 466,560', () => {
  expect(loadOf(Array(12).fill(46_656), 480_000)).toBe(466_560);
});

test('largestLoad is at most the sum of all', () => {
  expect(loadOf([3, 4], 100)).toBe(7);
});

test('largestLoad is what trying every set of panels finds', () => {
  const heights = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 9 });
  fc.assert(
    fc.property(heights, fc.integer({ min: 30, max: 120 }), (each, usable) => {
      let best = 0;
      for (let mask = 0; mask < 1 << each.length; mask++) {
        const sum = each.reduce((total, height, i) => total + ((mask >> i) & 1) * height, 0);
        if (sum <= usable) best = Math.max(best, sum);
      }
      expect(loadOf(each, usable)).toBe(best);
    }),
  );
});
