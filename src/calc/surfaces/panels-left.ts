import type { WallsResults } from '../walls/wall-result';
import { MOST_PANELS } from './size-limits';

/** Panels that a plan may have beside those of its walls. */
export function panelsLeft(walls: WallsResults): number {
  return MOST_PANELS - walls.walls.reduce((sum, wall) => sum + wall.table.count, 0);
}
