import type { SurfaceTable } from '../surfaces/surface-table';

/** A rectangle of places of one surface, from 0; `to` is the first one beyond. */
export interface Block {
  readonly fromColumn: number;
  readonly toColumn: number;
  readonly fromRow: number;
  readonly toRow: number;
}

/** Ways of walking a block back and forth; the first is the one for a block without holes. */
const walks = [
  { byRows: false, fromRight: false, fromTop: false },
  { byRows: false, fromRight: true, fromTop: false },
  { byRows: false, fromRight: false, fromTop: true },
  { byRows: false, fromRight: true, fromTop: true },
  { byRows: true, fromRight: false, fromTop: false },
  { byRows: true, fromRight: true, fromTop: false },
  { byRows: true, fromRight: false, fromTop: true },
  { byRows: true, fromRight: true, fromTop: true },
] as const;

type Lattice = Pick<SurfaceTable, 'rows' | 'at'>;

/** Chains of neighbours in the order of one walk; a new chain begins wherever the next panel does not touch the last. */
function walkBlock(lattice: Lattice, block: Block, walk: (typeof walks)[number]): number[][] {
  const { fromColumn, toColumn, fromRow, toRow } = block;
  const columns = toColumn - fromColumn;
  const rows = toRow - fromRow;
  const lines = walk.byRows ? rows : columns;
  const long = walk.byRows ? columns : rows;
  const linesBackwards = walk.byRows ? walk.fromTop : walk.fromRight;
  const firstBackwards = walk.byRows ? walk.fromRight : walk.fromTop;
  const chains: number[][] = [];
  let lastColumn = -2;
  let lastRow = -2;
  let forward = !firstBackwards;
  for (let line = 0; line < lines; line++) {
    const l = linesBackwards ? lines - 1 - line : line;
    for (let step = 0; step < long; step++) {
      const s = forward ? step : long - 1 - step;
      const column = fromColumn + (walk.byRows ? s : l);
      const row = fromRow + (walk.byRows ? l : s);
      const panel = lattice.at[column * lattice.rows + row]!;
      if (panel < 0) continue;
      const touches = Math.abs(column - lastColumn) + Math.abs(row - lastRow) === 1;
      if (touches) chains.at(-1)!.push(panel);
      else chains.push([panel]);
      lastColumn = column;
      lastRow = row;
    }
    forward = !forward;
  }
  return chains;
}

/** Panels of a block as the fewest chains of neighbours that a walk back and forth finds; one chain where it has no holes. */
export function traceBlock(lattice: Lattice, block: Block): number[][] {
  let best = walkBlock(lattice, block, walks[0]);
  for (let i = 1; i < walks.length && best.length > 1; i++) {
    const other = walkBlock(lattice, block, walks[i]!);
    if (other.length < best.length) best = other;
  }
  return best;
}
