import type { Raster } from '../raster';

/** Fills whole pixels from (x, y) on; what lies beside the raster is left out. */
export function fillRectangle(raster: Raster, x: number, y: number, width: number, height: number, ink: number): void {
  const left = Math.max(0, x);
  const right = Math.min(raster.width, x + width);
  if (left >= right) return;
  for (let row = Math.max(0, y); row < Math.min(raster.height, y + height); row++) {
    raster.inks.fill(ink, row * raster.width + left, row * raster.width + right);
  }
}
