import type { CeilingsResults } from '../ceilings/ceiling-result';
import type { WallsResults } from '../walls/wall-result';
import type { SurfaceSet } from './surface-table';

/**
 * All surfaces of the stage in the order in which their panels are numbered: walls, then ceilings, each by its place in
 * the plan. The two chapters keep the total at MOST_PANELS: what would pass it is left empty there, beside a check.
 */
export function joinSurfaces(walls: WallsResults, ceilings: CeilingsResults): SurfaceSet {
  const surfaces = [...walls.walls, ...ceilings.ceilings].map((result) => result.table);
  const offsets: number[] = [];
  let total = 0;
  for (const surface of surfaces) {
    offsets.push(total);
    total += surface.count;
  }
  return { surfaces, offsets, total };
}
