import { turnsHalf } from '../walls/turns-half';
import type { PointMm, WallResult } from '../walls/wall-result';

/** A wall that closes round a middle, and the largest disc about it that touches no panel. */
export interface Ring {
  readonly wallId: string;
  readonly wall: WallResult;
  readonly centre: PointMm;
  readonly radiusMm: number;
}

/** The first wall that turns half a turn or more, concave; null without one. */
export function firstRing(walls: readonly WallResult[]): Ring | null {
  for (const wall of walls) {
    const { wallId, bestFit, insideDiameterMm, turnsDeg } = wall;
    if (bestFit !== null && insideDiameterMm !== null && insideDiameterMm > 0 && turnsHalf(turnsDeg)) {
      return { wallId, wall, centre: bestFit.centre, radiusMm: insideDiameterMm / 2 };
    }
  }
  return null;
}
