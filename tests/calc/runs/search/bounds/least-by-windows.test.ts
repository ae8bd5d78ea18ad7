import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastByWindows } from '../../../../../src/calc/runs/search/bounds/least-by-windows';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

test('leastByWindows: runs from row 0 to row 3 on a port of four by rectangle are one column wide', () => {
  // 4 x 4 panels, only row 0 in reach, rectangle counts: up to row 3 a window is 4 rows, so one column. Row 3 has four panels: four runs.
  const region = regionOf(block(4, 4), aPort(4, 'rectangle', 100), Int32Array.from(Array(16).keys()));
  expect(leastByWindows(region, 0, 4)).toBe(4);
  // Of seven pixels' worth a window is still one column, of eight it is two.
  expect(leastByWindows({ ...region, limits: aPort(7, 'rectangle', 100) }, 0, 6)).toBe(4);
  expect(leastByWindows({ ...region, limits: aPort(8, 'rectangle', 100) }, 0, 8)).toBe(2);
});

test('leastByWindows says nothing where pixels count or reach does not', () => {
  const region = regionOf(block(4, 4), aPort(4, 'panels', 100), Int32Array.from(Array(16).keys()));
  expect(leastByWindows(region, 0, 4)).toBe(0);
  const rectangle = { ...region, limits: aPort(4, 'rectangle', 100) };
  expect(leastByWindows(rectangle, Number.POSITIVE_INFINITY, 4)).toBe(0);
});

test('leastByWindows is never above the fewest runs with as few entries above reach', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0 && limits.counting === 'rectangle');
      const best = leastByTrying(grid, limits);
      expect(leastByWindows(region, best.high, region.size)).toBeLessThanOrEqual(best.ports);
    }),
    { numRuns: 40 },
  );
});
