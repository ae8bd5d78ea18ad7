import { degrees, toRadians } from '../../units/angle';
import type { SurfaceTable } from '../surfaces/surface-table';

type Direction = readonly [x: number, y: number, z: number];

/** Unit directions of a panel in plan axes (x right, y up on the plan, z up), as seen from its lit side. */
export interface PanelAxes {
  /** Along its lower edge from left to right. */
  readonly across: Direction;
  /** From its lower edge to its upper one. */
  readonly up: Direction;
  /** Out of its LED face. */
  readonly out: Direction;
}

/** A wall's panel stands and looks to the right of its walk; a ceiling's lies and looks down. */
export function panelAxes({ kind, headingDeg }: SurfaceTable, local: number): PanelAxes {
  const heading = toRadians(degrees(headingDeg[local]!));
  const x = Math.cos(heading);
  const y = Math.sin(heading);
  const right = [y, -x, 0] as const;
  return kind === 'ceiling'
    ? { across: [x, y, 0], up: right, out: [0, 0, -1] }
    : { across: [x, y, 0], up: [0, 0, 1], out: right };
}
