import { LineBuilder } from './line-builder';
import { columnLeftMm, rowTopMm, type UnrolledGrid } from './unrolled-grid';

/** Index in the surface's table of the panels on the two sides of an edge; -1 where there is none. */
export type Differs = (one: number, other: number) => boolean;

/** All edges between neighbouring places of the lattice where the two sides differ, merged into lines as long as they go. */
export function traceEdges(grid: UnrolledGrid, differs: Differs): LineBuilder {
  const lines = new LineBuilder();
  const { columns, rows } = grid.table;
  const { firstRow, lastRow } = grid;
  const at = (column: number, row: number) =>
    column < 1 || column > columns || row < 1 || row > rows ? -1 : grid.table.at[(column - 1) * rows + row - 1]!;

  for (const strip of grid.strips) {
    const last = strip.firstColumn + strip.columns - 1;
    for (let column = strip.firstColumn - 1; column <= last; column++) {
      const x = grid.from === 'inside' ? columnLeftMm(grid, strip, column + 1) : columnLeftMm(grid, strip, column);
      // An edge where the strip is cut belongs to both strips; the surface goes on behind it.
      let since = 0;
      for (let row = firstRow; row <= lastRow + 1; row++) {
        const drawn = row <= lastRow && differs(at(column, row), at(column + 1, row));
        if (drawn && since === 0) since = row;
        if (!drawn && since > 0) {
          lines.segment(x, rowTopMm(grid, strip, since - 1), x, rowTopMm(grid, strip, row - 1));
          since = 0;
        }
      }
    }
    for (let row = firstRow - 1; row <= lastRow; row++) {
      const y = rowTopMm(grid, strip, row);
      let since = 0;
      for (let column = strip.firstColumn; column <= last + 1; column++) {
        const drawn = column <= last && differs(at(column, row), at(column, row + 1));
        if (drawn && since === 0) since = column;
        if (!drawn && since > 0) {
          const left = columnLeftMm(grid, strip, grid.from === 'inside' ? since : column - 1);
          lines.segment(left, y, left + (column - since) * grid.columnWidthMm, y);
          since = 0;
        }
      }
    }
  }
  return lines;
}
