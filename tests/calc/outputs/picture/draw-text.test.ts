import { expect, test } from 'vitest';
import { drawText, penOf, textSize, unitForWidth } from '../../../../src/calc/outputs/picture/draw-text';
import { blankRaster, rowsOf } from './raster-text';

test('drawText at one pixel a unit writes letters that can be read', () => {
  const raster = blankRaster(17, 7);
  drawText(raster, 'R2', 0, 0, 1, 1);
  expect(rowsOf(raster)).toEqual([
    '1111...111.......',
    '1...1.1...1......',
    '1...1.....1......',
    '1111.....1.......',
    '1.1.....1........',
    '1..1...1.........',
    '1...1.11111......',
  ]);
});

test('textSize is what drawText covers, to the pixel, at every size', () => {
  for (const unit of [1, 2, 3, 5, 8]) {
    const { width, height } = textSize('H8', unit);
    const raster = blankRaster(width + 6, height + 6);
    drawText(raster, 'H8', 3, 3, unit, 1);
    const rows = rowsOf(raster);
    const used = rows.flatMap((row, y) => (row.includes('1') ? [y] : []));
    const columns = rows.flatMap((row) => [...row].flatMap((sign, x) => (sign === '1' ? [x] : [])));
    expect([used[0], used.at(-1)]).toEqual([3, 3 + height - 1]);
    expect([Math.min(...columns), Math.max(...columns)]).toEqual([3, 3 + width - 1]);
  }
});

test('textSize of no text is nothing, and a blank is narrower than a letter', () => {
  expect(textSize('', 4)).toEqual({ width: 0, height: 0 });
  // Two letters and a blank: 4 + 2 + 2 + 2 + 4 units of 3 px, and the pen of 3.
  expect(textSize('A B', 3)).toEqual({ width: 45, height: 21 });
});

test('unitForWidth is the greatest that still fits', () => {
  for (const width of [4, 5, 40, 137]) {
    const unit = unitForWidth('A C38', width);
    expect(textSize('A C38', unit + 1).width).toBeGreaterThan(width);
    if (unit > 0) expect(textSize('A C38', unit).width).toBeLessThanOrEqual(width);
  }
  expect(unitForWidth('A C38', 10)).toBe(0);
  expect(unitForWidth('', 100)).toBe(0);
});

test('penOf grows with the letters and is never nothing', () => {
  expect([1, 2, 5, 10].map(penOf)).toEqual([1, 2, 4, 9]);
});
