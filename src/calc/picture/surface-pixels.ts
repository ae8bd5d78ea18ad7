import { countByType } from '../surfaces/count-by-type';
import type { SurfaceTable } from '../surfaces/surface-table';

/** Pixels of all panels of a surface. */
export function surfacePixels(surface: SurfaceTable): number {
  return countByType(surface).reduce((sum, count, t) => {
    const { pixelsWide, pixelsHigh } = surface.types[t]!;
    return sum + count * pixelsWide * pixelsHigh;
  }, 0);
}
