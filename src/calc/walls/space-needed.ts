import { walkwayBox } from './walkway-edge';
import type { WallResult } from './wall-result';

/** What walls ask of the floor, plan axes, their walkways included. */
export interface SpaceNeeded {
  readonly acrossMm: number;
  readonly alongMm: number;
}

/**
 * Sides of the smallest upright box round the walls and the walkway behind their back edges. The audience's side and the
 * ends of a wall ask for none. Zeros without walls.
 */
export function spaceNeeded(walls: readonly WallResult[], walkwayMm: number): SpaceNeeded {
  const { leftMm, rightMm, frontMm, backMm } = walkwayBox(walls, walkwayMm);
  return { acrossMm: rightMm - leftMm, alongMm: backMm - frontMm };
}
