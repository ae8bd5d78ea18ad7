import type { Region } from '../region';
import { type CanvasLattice, canvasLattice } from './canvas-lattice';
import { ceilDivide } from './ceil-divide';
import { sumInside, sumsBefore } from './sums-before';

/** Windows looked at, at most. */
const WINDOWS_TRIED = 3_000_000;

/**
 * A proved lower bound of runs where the enclosing rectangle counts: a run from an entry in reach that touches a row above
 * it encloses all rows between, so it is narrow and holds few panels of that row and its neighbours. `highMost` runs of
 * `panelsMost` panels may begin above reach. 0 where nothing can be said.
 */
export function leastByWindows(region: Region, highMost: number, panelsMost: number): number {
  const lattice = region.limits.counting === 'rectangle' ? canvasLattice(region) : null;
  if (lattice === null || highMost === Number.POSITIVE_INFINITY) return 0;
  const columns = lattice.left.length;
  const rows = lattice.top.length;
  const reached = highestRowInReach(region, lattice);
  if (reached < 0 || columns * columns * (rows - reached) ** 2 > WINDOWS_TRIED) return 0;
  const { panels } = sumsBefore(region, lattice);
  let least = 0;
  for (let low = reached + 1; low < rows; low++) {
    for (let up = low; up < rows; up++) {
      const all = sumInside(panels, rows, 0, columns - 1, low, up) - highMost * panelsMost;
      if (all <= 0) continue;
      const most = Math.min(panelsMost, mostFromReach(region, lattice, panels, reached, low, up));
      if (most > 0) least = Math.max(least, highMost + ceilDivide(all, most));
    }
  }
  return least;
}

function highestRowInReach(region: Region, lattice: CanvasLattice): number {
  let highest = -1;
  for (let cell = 0; cell < region.size; cell++) {
    if (region.outOfReach[cell] === 0) highest = Math.max(highest, region.row[cell]! - lattice.rowFirst);
  }
  return highest;
}

/** Most panels of the rows low..up in one window that comes up from the highest row in reach. */
function mostFromReach(
  region: Region,
  { left, right, top, bottom }: CanvasLattice,
  panels: Float64Array,
  reached: number,
  low: number,
  up: number,
): number {
  const rows = top.length;
  let most = 0;
  for (let c1 = 0; c1 < left.length; c1++) {
    for (let c2 = c1; c2 < left.length; c2++) {
      const width = right[c2]! - left[c1]!;
      let highest = low - 1;
      while (highest < up && (bottom[reached]! - top[highest + 1]!) * width <= region.limits.usablePixels) highest++;
      if (highest < low) break;
      most = Math.max(most, sumInside(panels, rows, c1, c2, low, highest));
    }
  }
  return most;
}
