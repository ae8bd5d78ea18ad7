import type { TurnDeg } from '../../plan/primitives';

/** A panel type as it sits on a surface: the sheet's figures after its turn. */
export interface PlacedPanelType {
  readonly panelId: string;
  readonly name: string;
  readonly turnDeg: TurnDeg;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly depthMm: number;
  readonly pixelsWide: number;
  readonly pixelsHigh: number;
}

/**
 * All panels of one surface as columns of numbers, index 0..count-1 in order of column, then row.
 * Wall: columns from the left as seen from inside, rows from the floor. Ceiling: as seen from below with plan +y up,
 * columns from the left, rows from the bottom; both count from 1.
 */
export interface SurfaceTable {
  readonly surfaceId: string;
  readonly letter: string;
  readonly name: string;
  readonly kind: 'wall' | 'ceiling';
  readonly count: number;
  /** Lattice size; not every place holds a panel. */
  readonly columns: number;
  readonly rows: number;
  readonly types: readonly PlacedPanelType[];
  readonly column: Uint16Array;
  readonly row: Uint16Array;
  /** Index into `types`. */
  readonly type: Uint8Array;
  /** Centre of the LED face: plan x right, plan y up, z above the floor. */
  readonly xMm: Float64Array;
  readonly yMm: Float64Array;
  readonly zMm: Float64Array;
  /** Heading of the panel's lower edge from left to right, as seen from inside (wall) or below (ceiling: own turn + 180), degrees anticlockwise from +x. */
  readonly headingDeg: Float64Array;
  /** Top left pixel on the surface's own canvas as seen from inside (wall) or below (ceiling); y counts down from the top row. */
  readonly canvasX: Uint32Array;
  readonly canvasY: Uint32Array;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** Index of the panel at (column - 1) * rows + (row - 1), or -1. */
  readonly at: Int32Array;
}

/** Surfaces of a stage in order: walls by their place in the plan, then ceilings. Panels are numbered through: `offset[i] + local index`. */
export interface SurfaceSet {
  readonly surfaces: readonly SurfaceTable[];
  readonly offsets: readonly number[];
  readonly total: number;
}
