import type { SurfaceTable } from '../surfaces/surface-table';

export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * What follows from one wall's record. A figure that has no meaning for the form (diameter of a flat wall) is null.
 * A wall that cannot be laid out (panel missing, widths differ, too many panels) has no columns and an empty table.
 */
export interface WallResult {
  readonly wallId: string;
  readonly letter: string;
  readonly name: string;
  readonly table: SurfaceTable;
  readonly columns: number;
  readonly rows: number;
  readonly columnWidthMm: number;
  readonly baseMm: number;
  readonly heightMm: number;
  /** Joint before each column, degrees; index 0 is 0. */
  readonly jointDeg: Float64Array;
  /** Heading of each column, degrees anticlockwise from +x. */
  readonly columnHeadingDeg: Float64Array;
  /** Lower corners of each column's LED face in plan, left then right as seen from inside: x0 y0 x1 y1 a column. */
  readonly frontMm: Float64Array;
  /** The same at the back of the deepest panel. */
  readonly backMm: Float64Array;
  /** Gap between backs (concave) or fronts (convex) before each column; index 0 is 0. */
  readonly seamMm: Float64Array;
  /** Circle of least squared distances to the middles of the column faces, and the worst of them; null for a flat wall and for fewer than three columns. */
  readonly bestFit: { readonly centre: PointMm; readonly radiusMm: number; readonly worstMm: number } | null;
  /** Of the largest circle about the best-fit centre that touches no face; null unless the wall turns concave on the whole. */
  readonly insideDiameterMm: number | null;
  /** Gap between the two ends of the path; null unless the wall turns half a turn or more. */
  readonly openingMm: number | null;
  /** Sum of joints, degrees. */
  readonly turnsDeg: number;
  readonly areaM2: number;
  readonly pixels: number;
  /** Smallest upright box round fronts and backs of all columns; left and right are x, front and back are y, least and greatest. */
  readonly box: {
    readonly leftMm: number;
    readonly rightMm: number;
    readonly frontMm: number;
    readonly backMm: number;
  };
}

export interface WallsResults {
  readonly walls: readonly WallResult[];
}
