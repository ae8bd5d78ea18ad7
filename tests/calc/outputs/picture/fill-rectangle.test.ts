import { expect, test } from 'vitest';
import { fillRectangle } from '../../../../src/calc/outputs/picture/fill-rectangle';
import { blankRaster, rowsOf } from './raster-text';

test('fillRectangle fills whole pixels and no other', () => {
  const raster = blankRaster(5, 3);
  fillRectangle(raster, 1, 1, 3, 1, 2);
  expect(rowsOf(raster)).toEqual(['.....', '.222.', '.....']);
});

test('fillRectangle leaves out what lies beside the raster, on every side', () => {
  const raster = blankRaster(3, 3);
  fillRectangle(raster, -1, -1, 2, 2, 1);
  fillRectangle(raster, 2, 2, 9, 9, 3);
  fillRectangle(raster, 5, 0, 2, 2, 4);
  fillRectangle(raster, 0, 7, 2, 2, 4);
  expect(rowsOf(raster)).toEqual(['1..', '...', '..3']);
});

test('fillRectangle of no width or height fills nothing', () => {
  const raster = blankRaster(2, 2);
  fillRectangle(raster, 0, 0, 0, 2, 1);
  fillRectangle(raster, 0, 0, 2, -1, 1);
  expect(rowsOf(raster)).toEqual(['..', '..']);
});
