import type { Lines } from './drawing';
import { LineBuilder } from './line-builder';
import { columnLeftMm, rowTopMm, stripShowing, type UnrolledGrid } from './unrolled-grid';

/**
 * Hatching of panels for which a step of the work is done, on a surface laid flat: three strokes a panel that rise to the
 * right and run on from panel to panel, so that it reads in black and white and apart from the crosses of dark panels.
 * `done` by panel through all surfaces, 1 where it is done.
 */
export function markDoneUnrolled(grid: UnrolledGrid, offset: number, done: ArrayLike<number>): Lines {
  const { table } = grid;
  const strokes = new LineBuilder();
  for (let local = 0; local < table.count; local++) {
    if (done[offset + local] !== 1) continue;
    const strip = stripShowing(grid, local);
    if (strip === null) continue;
    const row = table.row[local]!;
    const left = columnLeftMm(grid, strip, table.column[local]!);
    const [right, middle] = [left + grid.columnWidthMm, left + grid.columnWidthMm / 2];
    const [top, bottom] = [rowTopMm(grid, strip, row), rowTopMm(grid, strip, row - 1)];
    const half = (top + bottom) / 2;
    strokes.segment(left, half, middle, top).segment(left, bottom, right, top).segment(middle, bottom, right, half);
  }
  return strokes.build();
}
