import type { Region } from '../region';
import { canvasLattice } from './canvas-lattice';
import { sumInside, sumsBefore } from './sums-before';

/** Windows of columns by rows looked at, at most. */
const WINDOWS_TRIED = 3_000_000;

/** Most panels, and most pixels of panels, that one run can hold where its enclosing rectangle counts. */
export interface MostInRectangle {
  readonly panels: number;
  readonly pixels: number;
}

/**
 * Looks at every window of columns by rows whose rectangle on the canvas a port takes. Null where the canvas is no lattice
 * (a column's edges the same in all rows, a row's in all columns) or the region is too large to try all.
 */
export function mostInRectangle(region: Region): MostInRectangle | null {
  const lattice = canvasLattice(region);
  if (lattice === null) return null;
  const { left, right, top, bottom } = lattice;
  const columns = left.length;
  const rows = top.length;
  if (columns * columns * rows > WINDOWS_TRIED) return null;
  const { panels, pixels } = sumsBefore(region, lattice);
  let mostPanels = 0;
  let mostPixels = 0;
  for (let c1 = 0; c1 < columns; c1++) {
    for (let c2 = c1; c2 < columns; c2++) {
      const width = right[c2]! - left[c1]!;
      // Rows count up while the canvas counts down: row r2 is the upper one.
      let r2 = -1;
      for (let r1 = 0; r1 < rows; r1++) {
        r2 = Math.max(r2, r1 - 1);
        while (r2 + 1 < rows && (bottom[r1]! - top[r2 + 1]!) * width <= region.limits.usablePixels) r2++;
        if (r2 < r1) continue;
        mostPanels = Math.max(mostPanels, sumInside(panels, rows, c1, c2, r1, r2));
        mostPixels = Math.max(mostPixels, sumInside(pixels, rows, c1, c2, r1, r2));
      }
    }
  }
  return { panels: mostPanels, pixels: mostPixels };
}
