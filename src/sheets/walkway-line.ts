import type { PointMm, WallResult } from '../calc/walls/wall-result';
import { columnCorners } from './column-corners';

/** Outer edge of the walkway behind a wall: its back corners, left and right of each column, moved out square to the column. */
export function walkwayLine(wall: WallResult, walkwayMm: number): readonly PointMm[] {
  return Array.from({ length: wall.columns }, (_, i) => {
    const { backLeft, backRight, outX, outY } = columnCorners(wall, i + 1);
    return [backLeft, backRight].map(({ xMm, yMm }) => ({ xMm: xMm + outX * walkwayMm, yMm: yMm + outY * walkwayMm }));
  }).flat();
}
