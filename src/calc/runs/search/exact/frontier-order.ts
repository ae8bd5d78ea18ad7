import type { Region } from '../region';

/** The order in which a frontier takes the cells of a region: line by line along its longer side. */
export interface FrontierOrder {
  /** Places across the frontier: the region's shorter side. */
  readonly width: number;
  readonly cells: Int32Array;
  /** Place across the frontier of `cells[i]`. */
  readonly across: Int32Array;
  /** Side (as in `Region.neighbours`) of the neighbour on the next line, and of the next one on the same line. */
  readonly ahead: 0 | 1;
  readonly along: 0 | 1;
}

export function frontierOrder(region: Region): FrontierOrder {
  const { size, column, row } = region;
  const columns = rangeOf(column);
  const rows = rangeOf(row);
  const byColumns = columns.span >= rows.span;
  const line = byColumns ? column : row;
  const across = byColumns ? row : column;
  const cells = Int32Array.from({ length: size }, (_, cell) => cell).sort(
    (a, b) => line[a]! - line[b]! || across[a]! - across[b]!,
  );
  const first = byColumns ? rows.first : columns.first;
  return {
    width: byColumns ? rows.span : columns.span,
    cells,
    across: Int32Array.from(cells, (cell) => across[cell]! - first),
    ahead: byColumns ? 1 : 0,
    along: byColumns ? 0 : 1,
  };
}

function rangeOf(values: Int32Array): { readonly first: number; readonly span: number } {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    first = Math.min(first, value);
    last = Math.max(last, value);
  }
  return { first, span: last - first + 1 };
}
