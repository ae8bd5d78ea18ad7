import type { PointMm, WallResult } from '../calc/walls/wall-result';

/** The gap between the two ends of a wall that turns half a turn or more. */
export interface Opening {
  readonly wall: WallResult;
  /** Front corners at the two ends: of the last column, and of the first. */
  readonly from: PointMm;
  readonly to: PointMm;
  readonly middle: PointMm;
  /** Unit vector out of the stage. */
  readonly outX: number;
  readonly outY: number;
  readonly widthMm: number;
}

/** Widest opening of the walls; null where none is wider than a joint. */
export function findOpening(walls: readonly WallResult[]): Opening | null {
  let widest: Opening | null = null;
  for (const wall of walls) {
    const widthMm = wall.openingMm ?? 0;
    if (widthMm < 100 || widthMm <= (widest?.widthMm ?? 0)) continue;
    const last = wall.columns * 4 - 4;
    const from = { xMm: wall.frontMm[last + 2]!, yMm: wall.frontMm[last + 3]! };
    const to = { xMm: wall.frontMm[0]!, yMm: wall.frontMm[1]! };
    const middle = { xMm: (from.xMm + to.xMm) / 2, yMm: (from.yMm + to.yMm) / 2 };
    const inside = wall.bestFit?.centre ?? {
      xMm: (wall.box.leftMm + wall.box.rightMm) / 2,
      yMm: (wall.box.frontMm + wall.box.backMm) / 2,
    };
    const length = Math.hypot(middle.xMm - inside.xMm, middle.yMm - inside.yMm) || 1;
    widest = {
      wall,
      from,
      to,
      middle,
      outX: (middle.xMm - inside.xMm) / length,
      outY: (middle.yMm - inside.yMm) / length,
      widthMm,
    };
  }
  return widest;
}
