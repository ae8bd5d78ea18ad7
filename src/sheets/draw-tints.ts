import type { Fill } from './drawing';
import { LineBuilder } from './line-builder';
import { noTint } from './tint-panels';
import { columnLeftMm, rowTopMm, type UnrolledGrid } from './unrolled-grid';

/** One fill for each tint: the panels of a column that share it are one rectangle. */
export function drawTints(grid: UnrolledGrid, tintOf: (local: number) => number): readonly Fill[] {
  const { table } = grid;
  const fills = new Map<number, LineBuilder>();
  for (const strip of grid.strips) {
    for (let column = strip.firstColumn; column < strip.firstColumn + strip.columns; column++) {
      const left = columnLeftMm(grid, strip, column);
      let since = grid.firstRow;
      let tint = noTint;
      for (let row = grid.firstRow; row <= grid.lastRow + 1; row++) {
        const local = row > grid.lastRow ? -1 : table.at[(column - 1) * table.rows + row - 1]!;
        const here = local < 0 ? noTint : tintOf(local);
        if (here === tint) continue;
        if (tint !== noTint) {
          const lines = fills.get(tint) ?? new LineBuilder();
          fills.set(tint, lines);
          lines.rectangle(
            left,
            rowTopMm(grid, strip, row - 1),
            left + grid.columnWidthMm,
            rowTopMm(grid, strip, since - 1),
          );
        }
        since = row;
        tint = here;
      }
    }
  }
  return [...fills].map(([tint, lines]) => ({ layer: 'tint', paint: tint, leastScale: 0, lines: lines.build(true) }));
}
