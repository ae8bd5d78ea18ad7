/**
 * A picture as a rectangle of ink numbers, row by row from the top left. Its inks are red, green and blue in 16 bits each,
 * three numbers an ink; ink 0 is black, so a new raster is.
 */
export interface Raster {
  readonly width: number;
  readonly height: number;
  /** Ink of each pixel: `inks[y * width + x]`. */
  readonly inks: Uint16Array;
  readonly palette: Uint16Array;
}

/** An empty raster, all of it in ink 0. */
export function newRaster(width: number, height: number, palette: Uint16Array): Raster {
  return { width, height, inks: new Uint16Array(width * height), palette };
}
