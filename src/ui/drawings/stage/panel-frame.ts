import type { SurfaceTable } from '../../../calc/surfaces/surface-table';
import { type LatticeFrame, latticeFrame } from '../../../sheets/lattice-frame';
import { degrees, toRadians } from '../../../units/angle';

/** Directions of a panel in plan axes (x right, y up on the plan, z up): along its columns, along its rows, out of its LED face. */
export interface PanelFrame {
  readonly column: readonly [number, number, number];
  readonly row: readonly [number, number, number];
  readonly front: readonly [number, number, number];
}

/** Frames of a surface's panels, by their index in the table. A wall's face looks to the right of its walk, a ceiling's down. */
export function panelFrames(table: SurfaceTable): (local: number) => PanelFrame {
  if (table.kind === 'ceiling') {
    const frame = ceilingFrame(latticeFrame(table));
    return () => frame;
  }
  return (local) => {
    const heading = toRadians(degrees(table.headingDeg[local]!));
    const x = Math.cos(heading);
    const y = Math.sin(heading);
    return { column: [x, y, 0], row: [0, 0, 1], front: [y, -x, 0] };
  };
}

function ceilingFrame(lattice: LatticeFrame | null): PanelFrame {
  return {
    column: [lattice?.columnX ?? -1, lattice?.columnY ?? 0, 0],
    row: [lattice?.rowX ?? 0, lattice?.rowY ?? 1, 0],
    front: [0, 0, -1],
  };
}
