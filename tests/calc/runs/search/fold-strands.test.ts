import { expect, test } from 'vitest';
import { type Fold, foldStrands } from '../../../../src/calc/runs/search/fold-strands';

/** Strands of a zone of 3 columns by 3 rows; places without a cell are given, every other cell has its place's number. */
function fold(wide: number, by: Fold, missing: readonly number[] = []) {
  const cellAt = Int32Array.from({ length: 9 }, (_, place) => (missing.includes(place) ? -1 : place));
  const list = { cells: new Int32Array(9), start: new Int32Array(10), count: 0 };
  const block = { columnFirst: 0, columnLast: 2, rowFirst: 0, rowLast: 2 };
  foldStrands({ grid: { rows: 3 }, cellAt }, block, wide, by, list);
  return Array.from({ length: list.count }, (_, i) => [...list.cells.subarray(list.start[i], list.start[i + 1])]);
}

// Places are column * 3 + row: column 0 is 0 1 2, column 1 is 3 4 5, column 2 is 6 7 8.
test('foldStrands goes up one column and down the next, the odd strip last', () => {
  expect(fold(2, { along: 'columns', fromRight: false })).toEqual([
    [0, 1, 2, 5, 4, 3],
    [6, 7, 8],
  ]);
});

test('foldStrands from the right begins with the last column', () => {
  expect(fold(2, { along: 'columns', fromRight: true })).toEqual([
    [6, 7, 8, 5, 4, 3],
    [0, 1, 2],
  ]);
});

test('foldStrands along rows goes from the lowest row up, forth and back', () => {
  expect(fold(3, { along: 'rows', fromRight: false })).toEqual([[0, 3, 6, 7, 4, 1, 2, 5, 8]]);
  expect(fold(1, { along: 'rows', fromRight: true })).toEqual([
    [6, 3, 0],
    [7, 4, 1],
    [8, 5, 2],
  ]);
});

test('foldStrands breaks a strand at a hole and wherever the next panel is no neighbour', () => {
  expect(fold(3, { along: 'columns', fromRight: false }, [1, 5])).toEqual([[0], [2], [4, 3, 6, 7, 8]]);
});

test('foldStrands does not take the top of one column and the foot of the next for neighbours', () => {
  // Places 2 and 3 differ by one, and are the top of column 0 and the foot of column 1.
  expect(fold(2, { along: 'columns', fromRight: false }, [4, 5])).toEqual([[0, 1, 2], [3], [6, 7, 8]]);
});
