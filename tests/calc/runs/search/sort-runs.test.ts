import { expect, test } from 'vitest';
import { sortRuns } from '../../../../src/calc/runs/search/sort-runs';

test('sortRuns puts runs in the order of their entries and leaves behind what is not used', () => {
  const { order, start, pixels } = sortRuns({
    order: Int32Array.from([4, 5, 2, 1, 0, 9, 9]),
    start: Int32Array.from([0, 2, 5, 9]),
    pixels: Float64Array.from([20, 30, 99]),
    ports: 2,
  });
  expect([...order]).toEqual([2, 1, 0, 4, 5]);
  expect([...start]).toEqual([0, 3, 5]);
  expect([...pixels]).toEqual([30, 20]);
});
