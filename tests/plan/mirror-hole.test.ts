import { expect, test } from 'vitest';
import { mirrorHole } from '../../src/plan/mirror-hole';

const path = [
  { id: 'a', columns: 4, jointDeg: 0, mixed: null, jointBeforeDeg: 0 },
  { id: 'b', columns: 6, jointDeg: 0, mixed: null, jointBeforeDeg: 0 },
];
const hole = { id: 'door', name: '', segmentId: 'a', column: 2, row: 1, columns: 2, rows: 3 };

test('mirrorHole counts from the other end of the segment', () => {
  // Columns 2 and 3 of 10 become 8 and 9; behind b's six columns these are columns 2 and 3 of a.
  expect(mirrorHole(hole, path)).toEqual({ ...hole, column: 2 });
  expect(mirrorHole({ ...hole, column: 1 }, path)).toEqual({ ...hole, column: 3 });
});

test('mirrorHole begins in another segment where the hole goes over a joint', () => {
  // Columns 4, 5, 6 of 10 become 5, 6, 7: the fifth of b, on to the first of a.
  expect(mirrorHole({ ...hole, column: 4, columns: 3 }, path)).toEqual({
    ...hole,
    segmentId: 'b',
    column: 5,
    columns: 3,
  });
});

test('mirrorHole cuts off what reaches beyond the last column', () => {
  expect(mirrorHole({ ...hole, segmentId: 'b', column: 5, columns: 9 }, path)).toEqual({
    ...hole,
    segmentId: 'b',
    column: 1,
    columns: 2,
  });
});

test('mirrorHole leaves a hole that rests', () => {
  for (const resting of [
    { ...hole, segmentId: 'gone' },
    { ...hole, column: 5 },
  ]) {
    expect(mirrorHole(resting, path)).toBe(resting);
  }
});
