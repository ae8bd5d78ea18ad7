import { expect, test } from 'vitest';
import { listRunSets } from '../../../../../src/calc/runs/search/sets/run-sets';
import { SetCover } from '../../../../../src/calc/runs/search/sets/set-cover';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';

// Four columns of three, reach up to the lowest row (cells 0, 3, 6, 9): whole columns, the last one cut in two.
const { region } = makeReady(block(4, 3), aPort(3, 'panels', 100));
const sets = listRunSets(region, 1e6)!;
const start = {
  order: Int32Array.from([0, 1, 2, 5, 4, 3, 6, 7, 8, 9, 10, 11]),
  start: Int32Array.from([0, 3, 6, 9, 10, 12]),
};
const sizes = (cover: SetCover) => {
  const { start: ends } = cover.chains();
  return Array.from({ length: ends.length - 1 }, (_, i) => ends[i + 1]! - ends[i]!);
};

test('SetCover begins with the chains it is given and counts their ends above reach', () => {
  const cover = new SetCover(region, sets, start);
  // The run over the two upper panels of the last column begins above reach.
  expect([cover.high, cover.runs, sizes(cover)]).toEqual([1, 5, [3, 3, 3, 1, 2]]);
});

test('SetCover takes windows apart and goes back', () => {
  const cover = new SetCover(region, sets, start);
  const before = cover.setOf.slice();
  const window = cover.windowAt(0, 4, 0);
  // The first column alone: with its neighbour it would be six cells.
  expect([window.cells, window.high, window.sets.size]).toEqual([[0, 1, 2], 0, 1]);
  cover.takeApart(window);
  expect([cover.high, cover.runs]).toEqual([3, 7]);
  cover.restore(before);
  expect([cover.high, cover.runs]).toEqual([1, 5]);
  expect(cover.setOf).toEqual(before);
});

test('SetCover takes the set of a cell whole, however small the window', () => {
  expect(new SetCover(region, sets, start).windowAt(4, 1, 0).cells).toEqual([3, 4, 5]);
});

test('SetCover gives the whole region as a window', () => {
  const window = new SetCover(region, sets, start).whole();
  expect([window.cells.length, window.sets.size, window.high]).toEqual([12, 5, 1]);
});
