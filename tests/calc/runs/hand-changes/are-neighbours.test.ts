import { expect, test } from 'vitest';
import { areNeighbours } from '../../../../src/calc/runs/hand-changes/are-neighbours';

// Four rows a column: 0 1 2 3 | 4 5 6 7.
test.each([
  [0, 1, true],
  [1, 0, true],
  [1, 5, true],
  [4, 8, true],
  [0, 8, false],
  [3, 4, false],
  [0, 5, false],
  [0, 0, false],
  [0, 2, false],
])('areNeighbours of %i and %i: %s', (a, b, expected) => {
  expect(areNeighbours({ rows: 4 }, a, b)).toBe(expected);
});
