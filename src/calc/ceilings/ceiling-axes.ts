import type { Ceiling } from '../../plan/ceiling';
import { degrees, toRadians } from '../../units/angle';
import type { PointMm } from '../walls/wall-result';

/** Ways between the axes of a ceiling, as seen from below (u against its own x, v along its own y), and the plan; in mm. */
export interface CeilingAxes {
  readonly toPlan: (uMm: number, vMm: number) => PointMm;
  readonly fromPlan: (xMm: number, yMm: number) => readonly [uMm: number, vMm: number];
}

export function ceilingAxes({ xMm, yMm, turnDeg }: Ceiling['place']): CeilingAxes {
  const turn = toRadians(degrees(turnDeg));
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return {
    toPlan: (u, v) => ({ xMm: xMm - u * cos - v * sin, yMm: yMm - u * sin + v * cos }),
    fromPlan: (x, y) => [-((x - xMm) * cos + (y - yMm) * sin), (y - yMm) * cos - (x - xMm) * sin],
  };
}
