import { expect, test } from 'vitest';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { subRegion } from '../../../../src/calc/runs/search/sub-region';
import { aPort, block } from './block-of-panels';

test('subRegion of some cells is the region of their places', () => {
  const grid = block(4, 5, (place) => place !== 7);
  const limits = aPort(4, 'rectangle', 900);
  const all = regionOf(grid, limits, Int32Array.from([0, 1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 13]));
  const cells = Int32Array.from([12, 1, 2, 6, 7, 11]);
  const places = Int32Array.from(cells, (cell) => all.places[cell]!);
  expect(subRegion(all, cells)).toEqual(regionOf(grid, limits, places));
});
