import type { Chains } from './chains';
import { lineShare } from './draw-chains';
import type { Lines } from './drawing';
import { LineBuilder } from './line-builder';
import { columnLeftMm, rowTopMm, type UnrolledGrid } from './unrolled-grid';

/** Line of the chain that a panel is on, from its entry to its end; null where it is on none, or on another surface. */
export function chainThrough(grid: UnrolledGrid, offset: number, chains: Chains, panel: number): Lines | null {
  const chain = chains.list[chains.chainOf[panel] ?? -1];
  if (chain === undefined || chain.surfaceId !== grid.table.surfaceId) return null;
  const lines = new LineBuilder();
  let before = -1;
  for (let place = 0; place < chain.count; place++) {
    const local = chains.order[chain.start + place]! - offset;
    const column = grid.table.column[local]!;
    const row = grid.table.row[local]!;
    const index = grid.stripOf[column]!;
    const strip = grid.strips[index]!;
    const x = columnLeftMm(grid, strip, column) + grid.columnWidthMm * lineShare;
    const y = (rowTopMm(grid, strip, row) + rowTopMm(grid, strip, row - 1)) / 2;
    if (index === before) lines.lineTo(x, y);
    else lines.moveTo(x, y);
    before = index;
  }
  return lines.build();
}
