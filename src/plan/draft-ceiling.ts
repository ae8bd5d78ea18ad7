import type { Ceiling } from './ceiling';
import { freeLetter } from './free-letter';
import { freshId } from './fresh-id';
import type { Plan } from './plan';

/** A plain ceiling to begin with: 6 m by 4 m about the stage's origin, 5 m up, of one panel type, that does not travel. */
export function draftCeiling(plan: Plan, panelId: string): Ceiling {
  return {
    id: freshId(plan, 'ceiling'),
    letter: freeLetter(plan),
    name: 'Ceiling',
    panelId,
    turnDeg: 0,
    place: { xMm: 0, yMm: 0, turnDeg: 0, centredAcross: false, centredAlong: false },
    outline: { kind: 'rectangle', widthMm: 6000, depthMm: 4000 },
    rule: 'whole',
    holes: [],
    height: { trimMm: 5000, lowestMm: 5000, highestMm: 5000 },
  };
}
