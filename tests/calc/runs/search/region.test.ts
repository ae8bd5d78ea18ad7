import { expect, test } from 'vitest';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

test('regionOf knows the neighbours above, right, below and left that belong to it', () => {
  // Three columns of three without place 7 (column 2, row 1); the middle is place 4.
  const places = Int32Array.from([0, 1, 2, 3, 4, 5, 6, 8]);
  const region = regionOf(block(3, 3), aPort(9), places);
  expect([...region.neighbours.subarray(4 * 4, 5 * 4)].map((cell) => places[cell] ?? -1)).toEqual([5, -1, 3, 1]);
  // The top of a column is no neighbour of the foot of the next: place 2 and place 3.
  expect([...region.neighbours.subarray(2 * 4, 3 * 4)].map((cell) => places[cell] ?? -1)).toEqual([-1, 5, 1, -1]);
});

test('regionOf gives places, edges, pixels and what is above reach, in the order asked for', () => {
  const region = regionOf(block(2, 4), aPort(9, 'panels', 1000), Int32Array.from([7, 2]));
  expect([[...region.column], [...region.row]]).toEqual([
    [1, 0],
    [3, 2],
  ]);
  expect([region.left[0], region.right[0], region.top[0], region.bottom[0]]).toEqual([216, 432, 0, 216]);
  expect([...region.pixels]).toEqual([216 * 216, 216 * 216]);
  // Row 3 stands at 1500, row 2 at 1000, which is reach itself.
  expect([...region.outOfReach]).toEqual([1, 0]);
});
