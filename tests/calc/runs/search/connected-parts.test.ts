import { expect, test } from 'vitest';
import { connectedParts } from '../../../../src/calc/runs/search/connected-parts';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

test('connectedParts keeps apart what meets at a corner only', () => {
  // Three columns of two: 0 and 1, then 3, then 4 (column 2, row 0); 1 and 3 touch, 3 and 4 meet at a corner.
  const places = Int32Array.from([0, 1, 3, 4]);
  const parts = connectedParts(regionOf(block(3, 2), aPort(9), places));
  expect(parts.map((part) => [...part])).toEqual([[0, 1, 3], [4]]);
});

test('connectedParts of a whole block is the block, and of nothing nothing', () => {
  const all = Int32Array.from(Array(12).keys());
  expect(connectedParts(regionOf(block(3, 4), aPort(9), all))).toEqual([all]);
  expect(connectedParts(regionOf(block(3, 4), aPort(9), new Int32Array(0)))).toEqual([]);
});

test('connectedParts goes round a corner to all four sides', () => {
  // Of three columns of three: along the top, down the right, and back along the foot to the middle column.
  const hook = Int32Array.from([2, 3, 5, 6, 7, 8]);
  expect(connectedParts(regionOf(block(3, 3), aPort(9), hook))).toEqual([hook]);
});
