import type { PanelShape } from '../panels/panel-views';

/** Angles nearer than this, degrees, are one. */
const SAME_DEG = 1e-6;
/** A path turns by no more than this from column to column, whatever a lock takes. */
const WIDEST_DEG = 90;

/** Joints of a path that every one of some panels takes, degrees, ascending; null where no sheet states any. */
export function allowedJoints(shapes: readonly PanelShape[]): readonly number[] | null {
  const lists = shapes.map((shape) => shape.lock.stepsDeg).filter((steps) => steps.length > 0);
  const first = lists[0];
  if (first === undefined) return null;
  return [...new Set(first)]
    .filter((step) => Math.abs(step) <= WIDEST_DEG)
    .filter((step) => lists.every((list) => list.some((other) => Math.abs(other - step) < SAME_DEG)))
    .sort((a, b) => a - b);
}

/** The allowed joint nearest to one that is asked, the smaller turn where two are; null where none is allowed. */
export function nearestJoint(allowed: readonly number[], jointDeg: number): number | null {
  let nearest: number | null = null;
  for (const step of allowed) {
    if (nearest === null) nearest = step;
    const closer = Math.abs(step - jointDeg) - Math.abs(nearest - jointDeg);
    if (closer < 0 || (closer === 0 && Math.abs(step) < Math.abs(nearest))) nearest = step;
  }
  return nearest;
}

/** True where `jointDeg` is one of the allowed joints. */
export function isAllowedJoint(allowed: readonly number[], jointDeg: number): boolean {
  return allowed.some((step) => Math.abs(step - jointDeg) < SAME_DEG);
}
