import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitRows, stripHeights } from '../../../src/calc/zones/split-rows';

/** Rows of these heights on a canvas, the lowest first; -1: a row without panels, high as given by its neighbour's place. */
function rowsOf(heights: readonly number[], empty: readonly number[] = []) {
  const total = heights.reduce((sum, height) => sum + height, 0);
  let below = 0;
  const bottom = heights.map((height, r) => {
    const edge = total - below;
    below += height;
    return empty.includes(r) ? -1 : edge;
  });
  const top = bottom.map((edge, r) => (edge < 0 ? -1 : edge - heights[r]!));
  return { top: Int32Array.from(top), bottom: Int32Array.from(bottom) };
}

test('splitRows gives the lower strip the row that is over', () => {
  expect(splitRows(rowsOf(new Array<number>(13).fill(216)), 2)).toEqual([0, 7, 13]);
  expect(splitRows(rowsOf(new Array<number>(10).fill(100)), 4)).toEqual([0, 3, 5, 8, 10]);
});

test('splitRows keeps the tallest strip as low as it can be where rows differ', () => {
  // 4 rows of 100 under 2 of 400: 3 + 3 rows would be 300 and 900; 4 + 2 is 400 and 800.
  expect(splitRows(rowsOf([100, 100, 100, 100, 400, 400]), 2)).toEqual([0, 4, 6]);
});

test('splitRows leaves a row without panels out of a height', () => {
  const edges = rowsOf([100, 100, 100, 100], [0]);
  expect(stripHeights(edges)(0, 2)).toBe(100);
  expect(stripHeights(edges)(0, 4)).toBe(300);
  expect(stripHeights(edges)(0, 1)).toBe(0);
  expect(stripHeights(rowsOf([100, 200]))(0, 1)).toBe(100);
});

test('splitRows is null with fewer rows than strips', () => {
  expect(splitRows(rowsOf([100, 100]), 3)).toBeNull();
  expect(splitRows(rowsOf([100, 100]), 2)).toEqual([0, 1, 2]);
});

/** Every way to cut so many strips, by brute force. */
function leastTallest(heights: readonly number[], strips: number): number {
  if (strips === 1) return heights.reduce((sum, height) => sum + height, 0);
  let least = Number.POSITIVE_INFINITY;
  for (let first = 1; first <= heights.length - strips + 1; first++) {
    const low = heights.slice(0, first).reduce((sum, height) => sum + height, 0);
    least = Math.min(least, Math.max(low, leastTallest(heights.slice(first), strips - 1)));
  }
  return least;
}

test('splitRows cuts so that the tallest strip is the least of all ways to cut', () => {
  const heights = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 9 });
  fc.assert(
    fc.property(heights, fc.integer({ min: 1, max: 4 }), (list, strips) => {
      fc.pre(strips <= list.length);
      const starts = splitRows(rowsOf(list), strips)!;
      expect(starts).toHaveLength(strips + 1);
      expect([starts[0], starts.at(-1)]).toEqual([0, list.length]);
      const tall = starts.slice(1).map((end, i) => {
        expect(end).toBeGreaterThan(starts[i]!);
        return list.slice(starts[i], end).reduce((sum, height) => sum + height, 0);
      });
      expect(Math.max(...tall)).toBe(leastTallest(list, strips));
    }),
  );
});
