import { expect, test } from 'vitest';
import { CellLinks } from '../../../../src/calc/runs/search/cell-links';

test('CellLinks leads along a chain from either end', () => {
  const links = new CellLinks(4);
  links.link(0, 2);
  links.link(2, 1);
  expect([links.onward(0, -1), links.onward(2, 0), links.onward(1, 2)]).toEqual([2, 1, -1]);
  expect([links.onward(1, -1), links.onward(2, 1), links.onward(0, 2)]).toEqual([2, 0, -1]);
  expect([0, 1, 2, 3].map((cell) => links.isEnd(cell))).toEqual([true, true, false, true]);
});

test('CellLinks of a link that is cut is as if it had not been', () => {
  const links = new CellLinks(3);
  links.link(0, 1);
  links.link(1, 2);
  links.cut(1, 0);
  expect([links.has(0, 1), links.has(1, 0), links.has(1, 2), links.has(2, 1)]).toEqual([false, false, true, true]);
  links.link(0, 2);
  expect([links.onward(0, -1), links.onward(2, 0), links.onward(1, 2)]).toEqual([2, 1, -1]);
});
