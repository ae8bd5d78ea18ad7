import type { WallResult } from '../../calc/walls/wall-result';
import type { Plan } from '../../plan/plan';

export interface Room {
  /** What the walls and the walkways behind them take, along the side of the hall that is tighter. */
  readonly usedMm: number;
  /** That side of the hall; null where the hall is not stated. */
  readonly limitMm: number | null;
}

/** Room between the walls' back edges with their walkway and the hall, along the tighter side; the hall is turned where
 *  only so the walls fit, or fit better. Null without walls. */
export function roomToWalls(hall: Plan['wish']['hall'], walls: readonly Pick<WallResult, 'box'>[]): Room | null {
  if (walls.length === 0) return null;
  const across =
    Math.max(...walls.map(({ box }) => box.rightMm)) -
    Math.min(...walls.map(({ box }) => box.leftMm)) +
    2 * hall.walkwayMm;
  const along =
    Math.max(...walls.map(({ box }) => box.backMm)) -
    Math.min(...walls.map(({ box }) => box.frontMm)) +
    2 * hall.walkwayMm;
  const { lengthMm, widthMm } = hall;
  if (lengthMm === null || widthMm === null) return { usedMm: Math.max(across, along), limitMm: null };
  const tighter = (length: number, width: number): Room =>
    length - across < width - along ? { usedMm: across, limitMm: length } : { usedMm: along, limitMm: width };
  const straight = tighter(lengthMm, widthMm);
  const turned = tighter(widthMm, lengthMm);
  return (straight.limitMm ?? 0) - straight.usedMm >= (turned.limitMm ?? 0) - turned.usedMm ? straight : turned;
}
