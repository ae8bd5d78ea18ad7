import type { SurfaceTable } from '../surfaces/surface-table';
import { countByType } from './count-by-type';

/** Pixels of all panels of a surface. */
export function surfacePixels(surface: SurfaceTable): number {
  return countByType(surface).reduce((sum, count, t) => {
    const { pixelsWide, pixelsHigh } = surface.types[t]!;
    return sum + count * pixelsWide * pixelsHigh;
  }, 0);
}
