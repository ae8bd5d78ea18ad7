import { expect, test } from 'vitest';
import { sortRuns } from '../../../../src/calc/runs/search/sort-runs';
import { aPort, block } from './block-of-panels';

test('sortRuns puts runs in the order of their entries and leaves behind what is not used', () => {
  const list = { order: Int32Array.from([4, 5, 2, 1, 0, 9, 9]), start: Int32Array.from([0, 2, 5, 9]), ports: 2 };
  const { order, start, pixels } = sortRuns(block(2, 3), aPort(9), list);
  expect([...order]).toEqual([2, 1, 0, 4, 5]);
  expect([...start]).toEqual([0, 3, 5]);
  expect([...pixels]).toEqual([3 * 216 * 216, 2 * 216 * 216]);
});
