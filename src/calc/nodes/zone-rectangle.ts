import type { SurfaceTable } from '../surfaces/surface-table';
import type { Zone } from '../zones/zone-result';

/** Pixels of a zone on its surface's canvas: the smallest rectangle that holds its panels, and those that light a panel. */
export interface PixelRectangle {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly litPixels: number;
}

export function zoneRectangle(
  table: SurfaceTable,
  zone: Pick<Zone, 'firstColumn' | 'columns' | 'firstRow' | 'rows'>,
): PixelRectangle {
  let left = table.canvasWidth;
  let top = table.canvasHeight;
  let right = 0;
  let bottom = 0;
  let litPixels = 0;
  for (let c = zone.firstColumn - 1; c < zone.firstColumn - 1 + zone.columns; c++) {
    for (let r = zone.firstRow - 1; r < zone.firstRow - 1 + zone.rows; r++) {
      const panel = table.at[c * table.rows + r]!;
      if (panel < 0) continue;
      const { pixelsWide, pixelsHigh } = table.types[table.type[panel]!]!;
      const x = table.canvasX[panel]!;
      const y = table.canvasY[panel]!;
      left = Math.min(left, x);
      top = Math.min(top, y);
      right = Math.max(right, x + pixelsWide);
      bottom = Math.max(bottom, y + pixelsHigh);
      litPixels += pixelsWide * pixelsHigh;
    }
  }
  return { left, top, right, bottom, litPixels };
}

/** The smallest rectangle that holds them all; at least one. */
export function enclosing(parts: readonly PixelRectangle[]): PixelRectangle {
  return parts.reduce((all, part) => ({
    left: Math.min(all.left, part.left),
    top: Math.min(all.top, part.top),
    right: Math.max(all.right, part.right),
    bottom: Math.max(all.bottom, part.bottom),
    litPixels: all.litPixels + part.litPixels,
  }));
}
