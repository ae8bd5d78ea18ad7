import type { StageParts } from './stage-parts';
import { walkwayLine } from './walkway-line';

/** An upright rectangle in plan axes: x right, y up, seen from above. */
export interface PlanBox {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly lowMm: number;
  readonly highMm: number;
}

/** Smallest upright rectangle round all walls and the walkways behind them; null where there is no wall. */
export function boxRoundWalls(walls: StageParts['walls'], walkwayMm: number): PlanBox | null {
  const points = walls.flatMap((wall) => [
    ...walkwayLine(wall, walkwayMm),
    ...Array.from({ length: wall.columns * 2 }, (_, i) => ({
      xMm: wall.frontMm[i * 2]!,
      yMm: wall.frontMm[i * 2 + 1]!,
    })),
  ]);
  if (points.length === 0) return null;
  const box = { leftMm: Infinity, rightMm: -Infinity, lowMm: Infinity, highMm: -Infinity };
  for (const { xMm, yMm } of points) {
    box.leftMm = Math.min(box.leftMm, xMm);
    box.rightMm = Math.max(box.rightMm, xMm);
    box.lowMm = Math.min(box.lowMm, yMm);
    box.highMm = Math.max(box.highMm, yMm);
  }
  return box;
}

/**
 * The hall about the middle of the walls and their walkways, turned as its check judges it: whichever way round leaves
 * most. Null where a side of the hall is not stated.
 */
export function placeHall(hall: StageParts['hall'], walls: StageParts['walls']): PlanBox | null {
  const { lengthMm, widthMm } = hall;
  if (lengthMm === null || widthMm === null) return null;
  const box = boxRoundWalls(walls, hall.walkwayMm) ?? { leftMm: 0, rightMm: 0, lowMm: 0, highMm: 0 };
  const [needX, needY] = [box.rightMm - box.leftMm, box.highMm - box.lowMm];
  const least = (across: number, along: number) => Math.min(across - needX, along - needY);
  const turned = least(widthMm, lengthMm) > least(lengthMm, widthMm);
  const [across, along] = turned ? [widthMm, lengthMm] : [lengthMm, widthMm];
  const x = (box.leftMm + box.rightMm) / 2;
  const y = (box.lowMm + box.highMm) / 2;
  return { leftMm: x - across / 2, rightMm: x + across / 2, lowMm: y - along / 2, highMm: y + along / 2 };
}
