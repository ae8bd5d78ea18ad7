import { expect, test } from 'vitest';
import { drawText } from '../../../../src/calc/outputs/picture/draw-text';
import { glyphStrokes } from '../../../../src/calc/outputs/picture/glyph-strokes';
import { blankRaster, rowsOf } from './raster-text';

const signs = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-/>'];

test('glyphStrokes keep to the grid of 4 x 6, of every sign that names and ports are made of', () => {
  for (const sign of signs) {
    const points = glyphStrokes(sign).flat();
    expect(points.length, sign).toBeGreaterThan(1);
    for (const [x, y] of points) {
      expect(x >= 0 && x <= 4 && y >= 0 && y <= 6, sign).toBe(true);
    }
  }
});

test('glyphStrokes tell all signs apart, but for the letter O, which is written as nought', () => {
  const shapes = signs.map((sign) => {
    const raster = blankRaster(5, 7);
    drawText(raster, sign, 0, 0, 1, 1);
    return rowsOf(raster).join('');
  });
  expect(new Set(shapes).size).toBe(signs.length - 1);
});

test('glyphStrokes of a blank are none, and of a sign without a glyph a box', () => {
  expect(glyphStrokes(' ')).toEqual([]);
  expect(glyphStrokes('é')).toEqual(glyphStrokes('%'));
  expect(glyphStrokes('é')).not.toEqual([]);
});
