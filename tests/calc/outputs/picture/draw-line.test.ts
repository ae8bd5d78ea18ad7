import { expect, test } from 'vitest';
import { drawLine } from '../../../../src/calc/outputs/picture/draw-line';
import { blankRaster, rowsOf } from './raster-text';

const drawn = (width: number, height: number, from: [number, number], to: [number, number], pen: number) => {
  const raster = blankRaster(width, height);
  drawLine(raster, { x: from[0], y: from[1] }, { x: to[0], y: to[1] }, pen, 1);
  return rowsOf(raster);
};

test('drawLine with a pen of one pixel: level, upright and at 45 degrees, both ends included', () => {
  expect(drawn(5, 1, [1, 0], [3, 0], 1)).toEqual(['.111.']);
  expect(drawn(1, 4, [0, 3], [0, 1], 1)).toEqual(['.', '1', '1', '1']);
  expect(drawn(4, 4, [0, 3], [3, 0], 1)).toEqual(['...1', '..1.', '.1..', '1...']);
});

test('drawLine is the same from either end', () => {
  for (const [a, b] of [
    [
      [1, 2],
      [9, 2],
    ],
    [
      [2, 1],
      [2, 9],
    ],
    [
      [1, 9],
      [7, 3],
    ],
  ] as const) {
    expect(drawn(12, 12, [...a], [...b], 3)).toEqual(drawn(12, 12, [...b], [...a], 3));
  }
});

test('drawLine has a round pen: ends without corners, a body of its full width', () => {
  // A disc of 4: two rows of 4 between two of 2; the line is two pixels long.
  expect(drawn(7, 6, [2, 2], [3, 2], 4)).toEqual(['.......', '..111..', '.11111.', '.11111.', '..111..', '.......']);
});

test('drawLine of a point is the pen once, and beside the raster it is left out', () => {
  expect(drawn(3, 3, [1, 1], [1, 1], 1)).toEqual(['...', '.1.', '...']);
  expect(drawn(2, 2, [-5, -5], [-3, -3], 2)).toEqual(['..', '..']);
});
