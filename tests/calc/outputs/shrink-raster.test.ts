import { expect, test } from 'vitest';
import { shrinkRaster } from '../../../src/calc/outputs/shrink-raster';

/** Black, white, red, and a grey of 192 in 8 bits: 192 x 257. */
const palette = Uint16Array.of(0, 0, 0, 65535, 65535, 65535, 65535, 0, 0, 49344, 49344, 49344);
const raster = { width: 3, height: 2, palette, inks: Uint16Array.of(0, 1, 2, 0, 1, 2) };

test('shrinkRaster by 1 is the picture itself in 8 bits', () => {
  const { width, height, rgba } = shrinkRaster({ ...raster, inks: Uint16Array.of(3, 1, 2, 0, 1, 2) }, 1);
  expect([width, height]).toEqual([3, 2]);
  expect([...rgba.subarray(0, 12)]).toEqual([192, 192, 192, 255, 255, 255, 255, 255, 255, 0, 0, 255]);
});

test('shrinkRaster takes the mean, and at the edge only of what is there', () => {
  const { width, height, rgba, by } = shrinkRaster(raster, 2);
  expect([width, height, by]).toEqual([2, 1, 2]);
  // Two black and two white pixels; beside them one column of red.
  expect([...rgba]).toEqual([128, 128, 128, 255, 255, 0, 0, 255]);
});
