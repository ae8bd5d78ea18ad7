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
      for (const counting of ['panels', 'rectangle'] as const) {
        const signOf = (of: typeof grid) => Math.sign(compareWithMirror(of, counting));
        expect(signOf(mirrorGrid(grid)) + signOf(grid)).toBe(0);
      }
    }),
  );
  expect(compareWithMirror(block(5, 3), 'rectangle')).toBe(0);
  expect(
    compareWithMirror(
      block(5, 3, (place) => place !== 0),
      'rectangle',
    ),
  ).not.toBe(0);
  expect(
    compareWithMirror(
      block(5, 3, (place) => place !== 0 && place !== 12),
      'rectangle',
    ),
  ).toBe(0);
});

test('compareWithMirror minds where panels are on the canvas only where the rectangle round them counts', () => {
  // One row of two columns; the left panel stands two pixels aside.
  const grid = block(2, 1);
  grid.pixelLeft[0] = 2;
  grid.pixelLeft[1] = 300;
  grid.pixelWidth.fill(100);
  const shifted = { ...block(3, 1), pixelWidth: Uint32Array.of(100, 100, 100), pixelLeft: Uint32Array.of(0, 150, 400) };
  expect(compareWithMirror(grid, 'panels')).toBe(0);
  expect(compareWithMirror(shifted, 'panels')).toBe(0);
  expect(compareWithMirror(shifted, 'rectangle')).not.toBe(0);
});
