import type { SurfaceTable } from '../calc/surfaces/surface-table';

/** inside: as the audience sees a wall, or a ceiling from below; behind: as the crew sees a wall, or a ceiling from above. */
export type From = 'inside' | 'behind';

/** Columns of a surface that lie side by side in one strip of the drawing; the leftmost of them as drawn comes from `from`. */
export interface StripColumns {
  readonly firstColumn: number;
  readonly columns: number;
}

/** Rows of a surface that a drawing shows, from below. */
export interface RowsShown {
  readonly firstRow: number;
  readonly rows: number;
}

/** A rectangle of the lattice: what a drawing shows of a surface. */
export interface LatticePart extends StripColumns, RowsShown {}

export interface Strip extends StripColumns {
  readonly topMm: number;
  /** Lower edge of the lowest row that is shown. */
  readonly footMm: number;
  /** y of height 0: the floor under a wall, the lower edge of a ceiling's first row. */
  readonly zeroMm: number;
  readonly widthMm: number;
}

/** A surface laid flat and cut into strips, one under the other: where each panel lies in the drawing. */
export interface UnrolledGrid {
  readonly table: SurfaceTable;
  readonly from: From;
  readonly columnWidthMm: number;
  /** Heights of all rows' edges above zero, `table.rows + 1` of them. */
  readonly edgesMm: Float64Array;
  /** Rows that are shown. */
  readonly firstRow: number;
  readonly lastRow: number;
  readonly strips: readonly Strip[];
  /** Index of the strip of each column, `noStrip` where none shows it; index 0 is unused. */
  readonly stripOf: Uint16Array;
  /** Clear space above and below every strip, for texts and home runs, and beside it where those come from a side. */
  readonly aboveMm: number;
  readonly belowMm: number;
  readonly besideMm: number;
}

export const noStrip = 0xffff;

/** How many strips a surface is cut into, and the clear space above and below each, for texts and home runs. */
export interface StripLayout {
  readonly count: number;
  readonly aboveMm: number;
  readonly belowMm: number;
  /** Clear space beside a strip for home runs that come from a side; left out: as below. */
  readonly besideMm?: number;
  /** Columns of a strip at most; left out: as many as there are. */
  readonly widest?: number;
}

/** `strips` show a column once at most, in the order in which they are drawn from the top. */
export function layOutUnrolled(
  table: SurfaceTable,
  from: From,
  strips: readonly StripColumns[],
  { aboveMm, belowMm, besideMm = belowMm }: Pick<StripLayout, 'aboveMm' | 'belowMm' | 'besideMm'>,
  shown: RowsShown = { firstRow: 1, rows: table.rows },
): UnrolledGrid {
  const columnWidthMm = table.types[0]?.widthMm ?? 1;
  const edgesMm = rowEdges(table);
  const { firstRow } = shown;
  const lastRow = Math.min(table.rows, firstRow + shown.rows - 1);
  const lower = edgesMm[firstRow - 1]!;
  const zeroed = showsFloor(table, firstRow) ? Math.min(0, lower) : lower;
  const highest = edgesMm[lastRow] ?? 0;
  const stripOf = new Uint16Array(table.columns + 1).fill(noStrip);
  let top = aboveMm;
  const laid = strips.map((strip, index): Strip => {
    stripOf.fill(index, strip.firstColumn, strip.firstColumn + strip.columns);
    const placed = {
      ...strip,
      topMm: top,
      footMm: top + highest - lower,
      zeroMm: top + highest,
      widthMm: strip.columns * columnWidthMm,
    };
    top += highest - zeroed + aboveMm + belowMm;
    return placed;
  });
  return { table, from, columnWidthMm, edgesMm, firstRow, lastRow, strips: laid, stripOf, aboveMm, belowMm, besideMm };
}

/** Whether the floor is in the drawing: that of a wall whose lowest row is shown. */
function showsFloor(table: SurfaceTable, firstRow: number): boolean {
  return table.kind === 'wall' && firstRow === 1;
}

/** y of the lowest that a strip shows: the floor under a wall, else the lower edge of its lowest row. */
export function groundMm({ table, firstRow }: UnrolledGrid, strip: Strip): number {
  return showsFloor(table, firstRow) ? Math.max(strip.footMm, strip.zeroMm) : strip.footMm;
}

/** The strip that shows a panel, given by its index in the table; null where none does. */
export function stripShowing(grid: UnrolledGrid, local: number): Strip | null {
  const row = grid.table.row[local]!;
  if (row < grid.firstRow || row > grid.lastRow) return null;
  return grid.strips[grid.stripOf[grid.table.column[local]!]!] ?? null;
}

/** Left edge of a column as drawn; column may be one past either end of its strip. */
export function columnLeftMm(grid: UnrolledGrid, strip: Strip, column: number): number {
  const fromLeft = grid.from === 'inside' ? column - strip.firstColumn : strip.firstColumn + strip.columns - 1 - column;
  return fromLeft * grid.columnWidthMm;
}

/** y of the upper edge of a row; row 0 gives the lower edge of row 1. */
export function rowTopMm(grid: UnrolledGrid, strip: Strip, row: number): number {
  return strip.zeroMm - grid.edgesMm[row]!;
}

/** Index in the surface's table of the panel under a point of the drawing, -1 where there is none. */
export function panelUnder(grid: UnrolledGrid, xMm: number, yMm: number): number {
  const { table, edgesMm } = grid;
  for (const strip of grid.strips) {
    if (yMm < strip.topMm || yMm > strip.footMm || xMm < 0 || xMm >= strip.widthMm) continue;
    const fromLeft = Math.floor(xMm / grid.columnWidthMm);
    const column =
      grid.from === 'inside' ? strip.firstColumn + fromLeft : strip.firstColumn + strip.columns - 1 - fromLeft;
    const height = strip.zeroMm - yMm;
    let row = 1;
    while (row < table.rows && height >= edgesMm[row]!) row++;
    return table.at[(column - 1) * table.rows + row - 1] ?? -1;
  }
  return -1;
}

function rowEdges(table: SurfaceTable): Float64Array {
  const edges = new Float64Array(table.rows + 1).fill(Number.NaN);
  const usualMm = table.types[0]?.heightMm ?? 1;
  for (let i = 0; i < table.count; i++) {
    const row = table.row[i]!;
    if (!Number.isNaN(edges[row]!) && !Number.isNaN(edges[row - 1]!)) continue;
    const heightMm = table.types[table.type[i]!]!.heightMm;
    const lower = table.kind === 'wall' ? table.zMm[i]! - heightMm / 2 : (row - 1) * usualMm;
    edges[row - 1] = lower;
    edges[row] = lower + heightMm;
  }
  // A row without a single panel takes the usual height.
  const known = edges.findIndex((edge) => !Number.isNaN(edge));
  if (known < 0) edges[0] = 0;
  for (let row = known - 1; row >= 0; row--) edges[row] = edges[row + 1]! - usualMm;
  for (let row = 1; row <= table.rows; row++) {
    if (Number.isNaN(edges[row]!)) edges[row] = edges[row - 1]! + usualMm;
  }
  return edges;
}
