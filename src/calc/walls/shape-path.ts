import { boxRound } from './box-round';
import { fitCircle } from './fit-circle';
import { nearestFace } from './nearest-face';
import { turnsHalf } from './turns-half';
import { type WalkedPath, type WalkGiven, walkPath } from './walk-path';
import type { WallResult } from './wall-result';

export interface ShapeGiven extends WalkGiven {
  /** Where the middle of the wall stands in plan (see `Wall.place`). */
  readonly xMm: number;
  readonly yMm: number;
}

/** What the plan of a wall comes to, whatever its rows. */
export type PathShape = WalkedPath & Pick<WallResult, 'bestFit' | 'insideDiameterMm' | 'openingMm' | 'box'>;

/**
 * Walks a path, puts it in its place and measures it. Best fit is to the middles of the column faces. The inside
 * diameter is that of the largest circle about the best-fit centre that touches no face; only a wall that turns concave
 * on the whole has one.
 */
export function shapePath(given: ShapeGiven): PathShape {
  const path = walkPath(given);
  const { frontMm, backMm } = path;
  const lastX = frontMm[frontMm.length - 2]!;
  const lastY = frontMm[frontMm.length - 1]!;
  const fitted = path.turnsDeg === 0 && isStraight(given.jointDeg) ? null : fitCircle(faceMiddles(frontMm));
  const about = fitted !== null && turnsHalf(path.turnsDeg) ? fitted : { xMm: lastX / 2, yMm: lastY / 2 };
  const moveX = given.xMm - about.xMm;
  const moveY = given.yMm - about.yMm;
  for (const corners of [frontMm, backMm]) {
    for (let i = 0; i < corners.length; i += 2) {
      corners[i]! += moveX;
      corners[i + 1]! += moveY;
    }
  }
  const centre = fitted && { xMm: fitted.xMm + moveX, yMm: fitted.yMm + moveY };
  const nearest = centre !== null && path.turnsDeg > 0 ? nearestFace(frontMm, centre.xMm, centre.yMm) : null;
  return {
    ...path,
    bestFit: fitted &&
      centre && { centre, radiusMm: fitted.radiusMm, worstMm: worstMiss(frontMm, centre, fitted.radiusMm) },
    insideDiameterMm: nearest && 2 * nearest.distanceMm,
    openingMm: turnsHalf(path.turnsDeg)
      ? Math.sqrt((frontMm[0]! - frontMm[frontMm.length - 2]!) ** 2 + (frontMm[1]! - frontMm[frontMm.length - 1]!) ** 2)
      : null,
    box: boxRound([frontMm, backMm]),
  };
}

function isStraight(jointDeg: Float64Array): boolean {
  for (let c = 1; c < jointDeg.length; c++) if (jointDeg[c] !== 0) return false;
  return true;
}

function faceMiddles(frontMm: Float64Array): Float64Array {
  const middles = new Float64Array(frontMm.length / 2);
  for (let c = 0; c * 4 < frontMm.length; c++) {
    middles[c * 2] = (frontMm[c * 4]! + frontMm[c * 4 + 2]!) / 2;
    middles[c * 2 + 1] = (frontMm[c * 4 + 1]! + frontMm[c * 4 + 3]!) / 2;
  }
  return middles;
}

function worstMiss(frontMm: Float64Array, centre: { xMm: number; yMm: number }, radiusMm: number): number {
  const middles = faceMiddles(frontMm);
  let worst = 0;
  for (let i = 0; i < middles.length; i += 2) {
    const far = Math.sqrt((middles[i]! - centre.xMm) ** 2 + (middles[i + 1]! - centre.yMm) ** 2);
    worst = Math.max(worst, Math.abs(far - radiusMm));
  }
  return worst;
}
