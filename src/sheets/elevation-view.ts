import type { PointMm, WallResult } from '../calc/walls/wall-result';
import { columnCorners } from './column-corners';

/** Where a level view is taken from: the side of the opening (or of the audience), its opposite, or the right of it. */
export type ElevationSide = 'front' | 'back' | 'right';

/** A level direction of view: unit vectors in plan, into the picture and to its right. */
export interface ElevationView {
  readonly intoX: number;
  readonly intoY: number;
  readonly rightX: number;
  readonly rightY: number;
}

/**
 * The front is where the walls open to: against the sum of their outward directions, so a ring's opening, the audience of a
 * flat wall; plan -y where they close all round.
 */
export function elevationView(walls: readonly WallResult[], side: ElevationSide): ElevationView {
  let [x, y] = [0, 0];
  for (const wall of walls) {
    for (let column = 1; column <= wall.columns; column++) {
      const { outX, outY } = columnCorners(wall, column);
      x += outX * wall.columnWidthMm;
      y += outY * wall.columnWidthMm;
    }
  }
  const length = Math.hypot(x, y);
  // Into the picture from the front is away from the opening. Less than a millimetre is what rounding leaves of a closed ring.
  const [backX, backY] = length < 1 ? [0, 1] : [x / length, y / length];
  const [intoX, intoY] = { front: [backX, backY], back: [-backX, -backY], right: [-backY, backX] }[side] as [
    number,
    number,
  ];
  return { intoX, intoY, rightX: intoY, rightY: -intoX };
}

export function acrossMm({ rightX, rightY }: ElevationView, { xMm, yMm }: PointMm): number {
  return xMm * rightX + yMm * rightY;
}

export function depthMm({ intoX, intoY }: ElevationView, { xMm, yMm }: PointMm): number {
  return xMm * intoX + yMm * intoY;
}
