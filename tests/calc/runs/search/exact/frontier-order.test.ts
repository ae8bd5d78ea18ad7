import { expect, test } from 'vitest';
import { frontierOrder } from '../../../../../src/calc/runs/search/exact/frontier-order';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

test('frontierOrder goes line by line along the longer side', () => {
  // Four columns of two: column by column, each from the foot up.
  const wide = frontierOrder(regionOf(block(4, 2), aPort(9), Int32Array.from([7, 6, 5, 4, 3, 2, 1, 0])));
  expect(wide).toMatchObject({ width: 2, ahead: 1, along: 0 });
  expect([...wide.cells]).toEqual([7, 6, 5, 4, 3, 2, 1, 0]);
  expect([...wide.across]).toEqual([0, 1, 0, 1, 0, 1, 0, 1]);
  // Two columns of three: row by row, each from the left.
  const high = frontierOrder(regionOf(block(2, 3), aPort(9), Int32Array.from([0, 1, 2, 3, 4, 5])));
  expect(high).toMatchObject({ width: 2, ahead: 0, along: 1 });
  expect([...high.cells]).toEqual([0, 3, 1, 4, 2, 5]);
});

test('frontierOrder counts across from the first place that has a panel', () => {
  const { width, across } = frontierOrder(regionOf(block(5, 4), aPort(9), Int32Array.from([2, 3, 6, 7, 10, 11])));
  expect(width).toBe(2);
  expect([...across]).toEqual([0, 1, 0, 1, 0, 1]);
});
