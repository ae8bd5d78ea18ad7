import { expect, test } from 'vitest';
import { fillTriangle } from '../../../../src/calc/outputs/picture/fill-triangle';
import { blankRaster, rowsOf } from './raster-text';

test('fillTriangle fills an upright wedge, edges included', () => {
  const raster = blankRaster(7, 4);
  fillTriangle(raster, { x: 3, y: 0 }, { x: 0, y: 3 }, { x: 6, y: 3 }, 1);
  expect(rowsOf(raster)).toEqual(['...1...', '..111..', '.11111.', '1111111']);
});

test('fillTriangle fills the same whichever corner comes first', () => {
  const [a, b, c] = [
    { x: 0, y: 0 },
    { x: 8, y: 2 },
    { x: 3, y: 7 },
  ] as const;
  const filled = (...corners: [typeof a, typeof b | typeof c, typeof c | typeof b]) => {
    const raster = blankRaster(9, 8);
    fillTriangle(raster, ...corners, 1);
    return rowsOf(raster);
  };
  expect(filled(a, c, b)).toEqual(filled(a, b, c));
  expect(filled(a, b, c).join('').split('1').length - 1).toBeGreaterThan(20);
});

test('fillTriangle that is flat is the line of it', () => {
  const raster = blankRaster(5, 1);
  fillTriangle(raster, { x: 1, y: 0 }, { x: 3, y: 0 }, { x: 2, y: 0 }, 1);
  expect(rowsOf(raster)).toEqual(['.111.']);
});
