import { findOpening } from '../../../sheets/find-opening';
import type { StageParts } from '../../../sheets/stage-parts';
import { degrees, toRadians } from '../../../units/angle';
import type { Outlook } from './camera-views';

/** Out through the opening of a ring; else from where the audience of the first wall stands; else from below on the plan. */
export function outlookOf({ walls }: Pick<StageParts, 'walls'>): Outlook {
  const opening = findOpening(walls);
  if (opening !== null) return { x: opening.outX, y: opening.outY, enclosed: true };
  const wall = walls.find((one) => one.columns > 0);
  if (wall === undefined) return { x: 0, y: -1, enclosed: false };
  const heading = toRadians(degrees(wall.columnHeadingDeg[Math.floor((wall.columns - 1) / 2)]!));
  return { x: Math.sin(heading), y: -Math.cos(heading), enclosed: wall.turnsDeg >= 180 };
}
