import { expect, test } from 'vitest';
import { PathCover } from '../../../../src/calc/runs/search/path-cover';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

/** Two columns of four, entries up to row 1; a chain up the left column and on to the top of the right one, and the rest of that. */
function cover(panels: number, counting: 'panels' | 'rectangle' = 'panels') {
  const region = regionOf(block(2, 4), aPort(panels, counting, 600), Int32Array.from(Array(8).keys()));
  const chains = { order: Int32Array.from([0, 1, 2, 3, 7, 6, 5, 4]), start: Int32Array.from([0, 5, 8]) };
  return new PathCover(region, chains);
}

test('PathCover counts chains, what is too much on them and ends above reach', () => {
  expect(cover(5)).toMatchObject({ chains: 2, excess: 0, overloaded: 0, high: 0 });
  // Five panels on a port of three are two too many; three are none.
  expect(cover(3)).toMatchObject({ excess: 2, overloaded: 1 });
  // Both chains enclose more: 2 x 4 and 1 x 3 panels. Too much on a rectangle weighs half.
  expect(cover(6, 'rectangle')).toMatchObject({ excess: 1, overloaded: 1 });
});

test('PathCover reads back the chains it was given', () => {
  const { order, start } = cover(5).read();
  expect([...start]).toEqual([0, 5, 8]);
  expect([...order]).toEqual([0, 1, 2, 3, 7, 6, 5, 4]);
});

test('PathCover cuts the most overloaded chain in its middle, until every chain is one panel', () => {
  const cut = cover(3);
  expect(cut.cutWorst()).toBe(true);
  // Five in two and three.
  expect([...cut.read().start]).toEqual([0, 2, 5, 8]);
  expect(cut).toMatchObject({ chains: 3, overloaded: 0, excess: 0 });
  while (cut.cutWorst());
  expect(cut.chains).toBe(8);
  // Rows 2 and 3 are above reach.
  expect(cut.high).toBe(4);
});
