import type { StrandList } from './strand-list';

/** A rectangle of places, both ends included. */
export interface Block {
  readonly columnFirst: number;
  readonly columnLast: number;
  readonly rowFirst: number;
  readonly rowLast: number;
}

/** Which cell stands at every place (`column * rows + row`), -1 where none does. */
export interface CellMap {
  readonly grid: { readonly rows: number };
  readonly cellAt: Int32Array;
}

/** Back and forth along columns (up the first) or along rows (the lowest first), beginning on the left or on the right. */
export interface Fold {
  readonly along: 'columns' | 'rows';
  readonly fromRight: boolean;
}

/**
 * Adds the strands of a block that is cut into strips `wide` columns (or rows) each, the odd one last: on the right, or on the
 * left when from the right. Every strip is gone through back and forth; a place without a cell is left out and breaks the
 * strand, as does any step that is not to a neighbour.
 */
export function foldStrands(map: CellMap, block: Block, wide: number, fold: Fold, into: StrandList): void {
  const { columnFirst, columnLast, rowFirst, rowLast } = block;
  if (fold.along === 'rows') {
    for (let row = rowFirst; row <= rowLast; row += wide) {
      foldRows(map, { ...block, rowFirst: row, rowLast: Math.min(rowLast, row + wide - 1) }, fold.fromRight, into);
    }
  } else if (fold.fromRight) {
    for (let column = columnLast; column >= columnFirst; column -= wide) {
      foldColumns(map, column, Math.max(columnFirst, column - wide + 1), block, into);
    }
  } else {
    for (let column = columnFirst; column <= columnLast; column += wide) {
      foldColumns(map, column, Math.min(columnLast, column + wide - 1), block, into);
    }
  }
}

/** Up column `from` and on to column `to`, on its left or on its right. */
function foldColumns(map: CellMap, from: number, to: number, { rowFirst, rowLast }: Block, into: StrandList): void {
  const { rows } = map.grid;
  const side = to < from ? -rows : rows;
  const first = from * rows + rowFirst;
  foldLines(map.cellAt, { first, step: 1, steps: rowLast - rowFirst + 1, side, lines: Math.abs(to - from) + 1 }, into);
}

function foldRows(map: CellMap, block: Block, fromRight: boolean, into: StrandList): void {
  const { rows } = map.grid;
  const first = (fromRight ? block.columnLast : block.columnFirst) * rows + block.rowFirst;
  const steps = block.columnLast - block.columnFirst + 1;
  const lines = block.rowLast - block.rowFirst + 1;
  foldLines(map.cellAt, { first, step: fromRight ? -rows : rows, steps, side: 1, lines }, into);
}

/** Places to go through: `steps` of them on a line, each `step` further; from one line to the next by `side`. */
interface Lines {
  readonly first: number;
  readonly step: number;
  readonly steps: number;
  readonly side: number;
  readonly lines: number;
}

function foldLines(cellAt: Int32Array, { first, step, steps, side, lines }: Lines, into: StrandList): void {
  const { cells, start } = into;
  let count = into.count;
  const begin = start[count]!;
  let written = begin;
  let lastLine = 0;
  let lastOn = 0;
  for (let line = 0; line < lines; line++) {
    const forth = line % 2 === 0;
    for (let i = 0; i < steps; i++) {
      const on = forth ? i : steps - 1 - i;
      const cell = cellAt[first + line * side + on * step]!;
      if (cell < 0) continue;
      if (written > begin && Math.abs(line - lastLine) + Math.abs(on - lastOn) !== 1) start[++count] = written;
      cells[written++] = cell;
      lastLine = line;
      lastOn = on;
    }
  }
  if (written > begin) start[++count] = written;
  into.count = count;
}
