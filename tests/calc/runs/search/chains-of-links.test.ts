import { expect, test } from 'vitest';
import { chainsOfLinks } from '../../../../src/calc/runs/search/chains-of-links';

test('chainsOfLinks reads each chain once, from its first cell that is an end', () => {
  // 3 - 0 - 2, 1 alone, 5 - 4.
  const links = Int32Array.from([3, 2, -1, -1, 0, -1, 0, -1, 5, -1, 4, -1]);
  const { order, start } = chainsOfLinks(links);
  expect([...order]).toEqual([1, 2, 0, 3, 4, 5]);
  expect([...start]).toEqual([0, 1, 4, 6]);
});
