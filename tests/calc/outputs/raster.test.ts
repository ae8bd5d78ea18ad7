import { expect, test } from 'vitest';
import { newRaster } from '../../../src/calc/outputs/raster';

test('newRaster is all in ink 0, a number a pixel, in the palette that it was given', () => {
  const palette = Uint16Array.of(0, 0, 0, 65535, 0, 0);
  const { inks, ...rest } = newRaster(3, 2, palette);
  expect([...inks]).toEqual([0, 0, 0, 0, 0, 0]);
  expect(rest).toEqual({ width: 3, height: 2, palette });
});
