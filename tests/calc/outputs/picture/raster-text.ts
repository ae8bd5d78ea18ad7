import { newRaster, type Raster } from '../../../../src/calc/outputs/raster';

/** A small raster whose inks are shown as signs: '.' for 0, else the digit. */
export function blankRaster(width: number, height: number): Raster {
  return newRaster(width, height, new Uint16Array(3 * 10));
}

/** Rows of a raster as text, to be read as a picture. */
export function rowsOf({ width, height, inks }: Raster): string[] {
  return Array.from({ length: height }, (_, y) =>
    Array.from(inks.subarray(y * width, (y + 1) * width), (ink) => (ink === 0 ? '.' : String(ink))).join(''),
  );
}
