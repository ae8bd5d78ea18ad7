import { freeLetter } from './free-letter';
import { freshId } from './fresh-id';
import type { Plan } from './plan';
import type { Wall } from './wall';

/** A plain wall to begin with: straight, ten columns of six rows, of one panel type, standing on the floor. */
export function draftWall(plan: Plan, panelId: string): Wall {
  return {
    id: freshId(plan, 'wall'),
    letter: freeLetter(plan),
    name: 'Wall',
    place: { xMm: 0, yMm: 0, turnDeg: 0 },
    baseMm: 0,
    support: 'stands',
    path: [{ id: freshId(plan, 'segment'), columns: 10, jointDeg: 0, mixed: null, jointBeforeDeg: 0 }],
    bands: [{ id: freshId(plan, 'band'), panelId, rows: 6, turnDeg: 0 }],
    holes: [],
  };
}
