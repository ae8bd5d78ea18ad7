import { hallFit } from '../calc/walls/hall-fit';
import { walkwayBox } from '../calc/walls/walkway-edge';
import type { StageParts } from './stage-parts';

/** An upright rectangle in plan axes: x right, y up, seen from above. */
export interface PlanBox {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly lowMm: number;
  readonly highMm: number;
}

/** Smallest upright rectangle round all walls and the walkways behind them; null where there is no wall. */
export function boxRoundWalls(walls: StageParts['walls'], walkwayMm: number): PlanBox | null {
  if (walls.every((wall) => wall.columns === 0)) return null;
  const { leftMm, rightMm, frontMm, backMm } = walkwayBox(walls, walkwayMm);
  return { leftMm, rightMm, lowMm: frontMm, highMm: backMm };
}

/**
 * The hall about the middle of the walls and their walkways, turned as its check judges it: whichever way round leaves
 * most. Null where a side of the hall is not stated.
 */
export function placeHall(hall: StageParts['hall'], walls: StageParts['walls']): PlanBox | null {
  const { lengthMm, widthMm } = hall;
  if (lengthMm === null || widthMm === null) return null;
  const box = boxRoundWalls(walls, hall.walkwayMm) ?? { leftMm: 0, rightMm: 0, lowMm: 0, highMm: 0 };
  const needed = { acrossMm: box.rightMm - box.leftMm, alongMm: box.highMm - box.lowMm };
  const [across, along] = hallFit(needed, lengthMm, widthMm).turned ? [widthMm, lengthMm] : [lengthMm, widthMm];
  const x = (box.leftMm + box.rightMm) / 2;
  const y = (box.lowMm + box.highMm) / 2;
  return { leftMm: x - across / 2, rightMm: x + across / 2, lowMm: y - along / 2, highMm: y + along / 2 };
}
