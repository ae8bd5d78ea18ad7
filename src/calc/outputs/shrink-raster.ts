import type { Raster } from './raster';

/** A picture in red, green, blue and opacity of 8 bits each, as screens take it. */
export interface ScreenPicture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
  /** Pixels of the canvas that one pixel is wide and high; the last ones may stand for fewer. */
  readonly by: number;
}

/** A raster drawn smaller by a whole number: every pixel is the mean of those that it stands for. */
export function shrinkRaster({ width, height, inks, palette }: Raster, by: number): ScreenPicture {
  const small = { width: Math.ceil(width / by), height: Math.ceil(height / by) };
  const rgba = new Uint8ClampedArray(small.width * small.height * 4);
  for (let y = 0; y < small.height; y++) {
    const bottom = Math.min(height, (y + 1) * by);
    for (let x = 0; x < small.width; x++) {
      const right = Math.min(width, (x + 1) * by);
      let [red, green, blue] = [0, 0, 0];
      for (let row = y * by; row < bottom; row++) {
        for (let at = row * width + x * by; at < row * width + right; at++) {
          const ink = inks[at]! * 3;
          red += palette[ink]!;
          green += palette[ink + 1]!;
          blue += palette[ink + 2]!;
        }
      }
      const count = (right - x * by) * (bottom - y * by) * 257;
      rgba.set([red / count, green / count, blue / count, 255], (y * small.width + x) * 4);
    }
  }
  return { ...small, rgba, by };
}
