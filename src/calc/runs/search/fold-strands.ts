import type { WiringGrid } from '../wiring-grid';

/** A rectangle of places, both ends included. */
export interface Block {
  readonly columnFirst: number;
  readonly columnLast: number;
  readonly rowFirst: number;
  readonly rowLast: number;
}

/**
 * Strands that go back and forth through a block: up the first column and down the next (`along` columns), or along the
 * lowest row and back along the next (`along` rows), beginning at the left or at the right. A strand lists cells, by
 * `cellAt` of their places; a place without a cell (-1) is left out and breaks the strand, as does any step that is not
 * to a neighbour.
 */
export function foldStrands(
  grid: WiringGrid,
  cellAt: Int32Array,
  block: Block,
  along: 'columns' | 'rows',
  fromRight: boolean,
): number[][] {
  const { rows } = grid;
  const strands: number[][] = [];
  let strand: number[] = [];
  let lastColumn = -2;
  let lastRow = -2;
  const wide = block.columnLast - block.columnFirst + 1;
  const tall = block.rowLast - block.rowFirst + 1;
  const lines = along === 'columns' ? wide : tall;
  const places = along === 'columns' ? tall : wide;
  for (let line = 0; line < lines; line++) {
    for (let i = 0; i < places; i++) {
      const on = line % 2 === 0 ? i : places - 1 - i;
      const across = along === 'columns' ? line : on;
      const column = fromRight ? block.columnLast - across : block.columnFirst + across;
      const row = block.rowFirst + (along === 'columns' ? on : line);
      const cell = cellAt[column * rows + row]!;
      if (cell < 0) continue;
      if (Math.abs(column - lastColumn) + Math.abs(row - lastRow) !== 1 && strand.length > 0) {
        strands.push(strand);
        strand = [];
      }
      strand.push(cell);
      lastColumn = column;
      lastRow = row;
    }
  }
  if (strand.length > 0) strands.push(strand);
  return strands;
}

/** Cuts a block into strips `wide` columns (or rows) each, the odd one last: on the right, or on the left when from the right. */
export function stripsOf(block: Block, wide: number, along: 'columns' | 'rows', fromRight: boolean): Block[] {
  const strips: Block[] = [];
  if (along === 'rows') {
    for (let row = block.rowFirst; row <= block.rowLast; row += wide) {
      strips.push({ ...block, rowFirst: row, rowLast: Math.min(block.rowLast, row + wide - 1) });
    }
  } else if (fromRight) {
    for (let column = block.columnLast; column >= block.columnFirst; column -= wide) {
      strips.push({ ...block, columnFirst: Math.max(block.columnFirst, column - wide + 1), columnLast: column });
    }
  } else {
    for (let column = block.columnFirst; column <= block.columnLast; column += wide) {
      strips.push({ ...block, columnFirst: column, columnLast: Math.min(block.columnLast, column + wide - 1) });
    }
  }
  return strips;
}
