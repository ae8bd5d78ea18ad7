import type { PointMm, WallResult } from '../calc/walls/wall-result';

/** The four corners of one column in plan, and the unit vector from its LED face to its back. */
export interface ColumnCorners {
  readonly frontLeft: PointMm;
  readonly frontRight: PointMm;
  readonly backLeft: PointMm;
  readonly backRight: PointMm;
  readonly outX: number;
  readonly outY: number;
}

/** `column` counts from 1. */
export function columnCorners(wall: Pick<WallResult, 'frontMm' | 'backMm'>, column: number): ColumnCorners {
  const i = (column - 1) * 4;
  const point = (from: Float64Array, k: number): PointMm => ({ xMm: from[i + k]!, yMm: from[i + k + 1]! });
  const [frontLeft, frontRight] = [point(wall.frontMm, 0), point(wall.frontMm, 2)];
  const length = Math.hypot(frontRight.xMm - frontLeft.xMm, frontRight.yMm - frontLeft.yMm) || 1;
  return {
    frontLeft,
    frontRight,
    backLeft: point(wall.backMm, 0),
    backRight: point(wall.backMm, 2),
    outX: -(frontRight.yMm - frontLeft.yMm) / length,
    outY: (frontRight.xMm - frontLeft.xMm) / length,
  };
}
