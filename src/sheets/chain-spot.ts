import { columnLeftMm, rowTopMm, stripShowing, type UnrolledGrid } from './unrolled-grid';

/** Where in a panel, from its left edge as drawn, the line of its chain passes; home runs take the other part. */
const lineShare = 0.62;

/** A point of a drawing in one of its strips. */
export interface ChainSpot {
  readonly x: number;
  readonly y: number;
  readonly strip: number;
}

/** Where the line of a chain passes a panel, given by its index in the table; null where the drawing does not show it. */
export function chainSpot(grid: UnrolledGrid, local: number): ChainSpot | null {
  const strip = stripShowing(grid, local);
  if (strip === null) return null;
  const column = grid.table.column[local]!;
  const row = grid.table.row[local]!;
  return {
    x: columnLeftMm(grid, strip, column) + grid.columnWidthMm * lineShare,
    y: (rowTopMm(grid, strip, row) + rowTopMm(grid, strip, row - 1)) / 2,
    strip: grid.stripOf[column]!,
  };
}
