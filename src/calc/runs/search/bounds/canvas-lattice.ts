import type { Region } from '../region';

/** Edges of a region's columns and rows on a canvas where they are the same all along; rows count up, the canvas down. */
export interface CanvasLattice {
  readonly columnFirst: number;
  readonly rowFirst: number;
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly top: Float64Array;
  readonly bottom: Float64Array;
}

/** Null where a column's or a row's edges differ along it, or do not rise from column to column and from row to row. */
export function canvasLattice(region: Region): CanvasLattice | null {
  const { size, column, row } = region;
  if (size === 0) return null;
  const [columnFirst, columnLast] = rangeOf(column);
  const [rowFirst, rowLast] = rangeOf(row);
  const edges = (count: number) => new Float64Array(count).fill(-1);
  const lattice = {
    columnFirst,
    rowFirst,
    left: edges(columnLast - columnFirst + 1),
    right: edges(columnLast - columnFirst + 1),
    top: edges(rowLast - rowFirst + 1),
    bottom: edges(rowLast - rowFirst + 1),
  };
  for (let cell = 0; cell < size; cell++) {
    const c = column[cell]! - columnFirst;
    const r = row[cell]! - rowFirst;
    const same =
      agree(lattice.left, c, region.left[cell]!) &&
      agree(lattice.right, c, region.right[cell]!) &&
      agree(lattice.top, r, region.top[cell]!) &&
      agree(lattice.bottom, r, region.bottom[cell]!);
    if (!same) return null;
  }
  const rising = (edge: Float64Array, sign: number) => edge.every((v, i) => i === 0 || sign * v >= sign * edge[i - 1]!);
  if (!rising(lattice.left, 1) || !rising(lattice.right, 1)) return null;
  return rising(lattice.top, -1) && rising(lattice.bottom, -1) ? lattice : null;
}

function rangeOf(values: Int32Array): readonly [first: number, last: number] {
  let first = values[0]!;
  let last = first;
  for (const value of values) {
    if (value < first) first = value;
    else if (value > last) last = value;
  }
  return [first, last];
}

function agree(edges: Float64Array, at: number, value: number): boolean {
  if (edges[at] === -1) edges[at] = value;
  return edges[at] === value;
}
