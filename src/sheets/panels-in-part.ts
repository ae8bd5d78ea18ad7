import type { Box } from './drawing';
import { rowTopMm, type Strip, type UnrolledGrid } from './unrolled-grid';

/** Panels that lie in a part of the drawing, wholly or not, by their index in the surface's table. */
export function* panelsInPart(grid: UnrolledGrid, part: Box): Generator<number> {
  const { table } = grid;
  for (const strip of grid.strips) {
    if (part.bottomMm < strip.topMm || part.topMm > strip.footMm) continue;
    const [first, last] = columnsIn(grid, strip, part);
    for (let column = first; column <= last; column++) {
      for (let row = grid.firstRow; row <= grid.lastRow; row++) {
        const local = table.at[(column - 1) * table.rows + row - 1]!;
        if (local < 0 || rowTopMm(grid, strip, row - 1) < part.topMm || rowTopMm(grid, strip, row) > part.bottomMm)
          continue;
        yield local;
      }
    }
  }
}

function columnsIn(grid: UnrolledGrid, strip: Strip, part: Box): [number, number] {
  const from = Math.max(0, Math.floor(part.leftMm / grid.columnWidthMm));
  const until = Math.min(strip.columns - 1, Math.floor(part.rightMm / grid.columnWidthMm));
  return grid.from === 'inside'
    ? [strip.firstColumn + from, strip.firstColumn + until]
    : [strip.firstColumn + strip.columns - 1 - until, strip.firstColumn + strip.columns - 1 - from];
}
