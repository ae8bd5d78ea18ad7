import type { StageParts } from './stage-parts';

/** An upright rectangle in plan axes: x right, y up, seen from above. */
export interface PlanBox {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly lowMm: number;
  readonly highMm: number;
}

/** Smallest upright rectangle round the back edges of all walls, or null where there is no wall. */
export function boxRoundWalls(walls: StageParts['walls']): PlanBox | null {
  if (walls.length === 0) return null;
  const corners = walls.flatMap((wall) => [
    [wall.box.leftMm, wall.box.frontMm],
    [wall.box.rightMm, wall.box.backMm],
  ]);
  const xs = corners.map(([x]) => x!);
  const ys = corners.map(([, y]) => y!);
  return { leftMm: Math.min(...xs), rightMm: Math.max(...xs), lowMm: Math.min(...ys), highMm: Math.max(...ys) };
}

/**
 * The hall about the middle of the walls: its length across the plan, or up the plan where only so the walls and the
 * walkway behind them have room. Null where a side of the hall is not stated.
 */
export function placeHall(hall: StageParts['hall'], walls: StageParts['walls']): PlanBox | null {
  if (hall.lengthMm === null || hall.widthMm === null) return null;
  const box = boxRoundWalls(walls) ?? { leftMm: 0, rightMm: 0, lowMm: 0, highMm: 0 };
  const needX = box.rightMm - box.leftMm + 2 * hall.walkwayMm;
  const needY = box.highMm - box.lowMm + 2 * hall.walkwayMm;
  const fits = hall.lengthMm >= needX && hall.widthMm >= needY;
  const fitsTurned = hall.widthMm >= needX && hall.lengthMm >= needY;
  const turned = !fits && (fitsTurned || needY > needX);
  const across = turned ? hall.widthMm : hall.lengthMm;
  const along = turned ? hall.lengthMm : hall.widthMm;
  const x = (box.leftMm + box.rightMm) / 2;
  const y = (box.lowMm + box.highMm) / 2;
  return { leftMm: x - across / 2, rightMm: x + across / 2, lowMm: y - along / 2, highMm: y + along / 2 };
}
