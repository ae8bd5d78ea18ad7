import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareWithMirror, mirrorGrid, mirrorPlace } from '../../../../src/calc/runs/search/mirror-grid';
import { block } from './block-of-panels';

const grids = fc
  .record({
    columns: fc.integer({ min: 1, max: 4 }),
    rows: fc.integer({ min: 1, max: 3 }),
    gone: fc.uniqueArray(fc.nat(11), { maxLength: 5 }),
    wide: fc.option(fc.nat(11)),
  })
  .map(({ columns, rows, gone, wide }) => {
    const grid = block(columns, rows, (place) => !gone.includes(place));
    if (wide !== null && wide < columns * rows) grid.pixelWidth[wide] = 300;
    return grid;
  });

test('mirrorPlace stays on its row', () => {
  // Four columns of three: column 0, row 1 goes to column 3, row 1.
  expect([mirrorPlace(4, 3, 1), mirrorPlace(4, 3, 10)]).toEqual([10, 1]);
});

test('mirrorGrid twice is the grid, as far as there are panels', () => {
  fc.assert(
    fc.property(grids, (grid) => {
      const twice = mirrorGrid(mirrorGrid(grid));
      const seen = ({ present, pixelLeft, pixelTop, pixelWidth, entryHeightMm }: typeof grid) =>
        [...present].map((there, place) =>
          there === 0 ? null : [pixelLeft[place], pixelTop[place], pixelWidth[place], entryHeightMm[place]],
        );
      expect(seen(twice)).toEqual(seen(grid));
    }),
  );
});

test('compareWithMirror puts a grid and its mirror image in one order, and is 0 for what is its own image', () => {
  fc.assert(
    fc.property(grids, (grid) => {
      expect(Math.sign(compareWithMirror(mirrorGrid(grid))) + Math.sign(compareWithMirror(grid))).toBe(0);
    }),
  );
  expect(compareWithMirror(block(5, 3))).toBe(0);
  expect(compareWithMirror(block(5, 3, (place) => place !== 0))).not.toBe(0);
  expect(compareWithMirror(block(5, 3, (place) => place !== 0 && place !== 12))).toBe(0);
});
