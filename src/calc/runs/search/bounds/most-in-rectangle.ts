import type { Region } from '../region';

/** Windows of columns by rows looked at, at most. */
const WINDOWS_TRIED = 3_000_000;

/** Most panels, and most pixels of panels, that one run can hold where its enclosing rectangle counts. */
export interface MostInRectangle {
  readonly panels: number;
  readonly pixels: number;
}

/**
 * Looks at every window of columns by rows whose rectangle on the canvas a port takes. Null where the canvas is no lattice
 * (a column's edges the same in all rows, a row's in all columns) or the region is too large to try all.
 */
export function mostInRectangle(region: Region): MostInRectangle | null {
  const lattice = latticeOf(region);
  if (lattice === null) return null;
  const { left, right, top, bottom } = lattice;
  const columns = left.length;
  const rows = top.length;
  if (columns * columns * rows > WINDOWS_TRIED) return null;
  const { panels, pixels } = sumsBefore(region, lattice);
  const inside = (sums: Float64Array, c1: number, c2: number, r1: number, r2: number) =>
    sums[(c2 + 1) * (rows + 1) + r2 + 1]! -
    sums[c1 * (rows + 1) + r2 + 1]! -
    sums[(c2 + 1) * (rows + 1) + r1]! +
    sums[c1 * (rows + 1) + r1]!;
  let mostPanels = 0;
  let mostPixels = 0;
  for (let c1 = 0; c1 < columns; c1++) {
    for (let c2 = c1; c2 < columns; c2++) {
      const width = right[c2]! - left[c1]!;
      // Rows count up while the canvas counts down: row r2 is the upper one.
      let r2 = -1;
      for (let r1 = 0; r1 < rows; r1++) {
        r2 = Math.max(r2, r1 - 1);
        while (r2 + 1 < rows && (bottom[r1]! - top[r2 + 1]!) * width <= region.limits.usablePixels) r2++;
        if (r2 < r1) continue;
        mostPanels = Math.max(mostPanels, inside(panels, c1, c2, r1, r2));
        mostPixels = Math.max(mostPixels, inside(pixels, c1, c2, r1, r2));
      }
    }
  }
  return { panels: mostPanels, pixels: mostPixels };
}

interface Lattice {
  readonly columnFirst: number;
  readonly rowFirst: number;
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly top: Float64Array;
  readonly bottom: Float64Array;
}

function latticeOf(region: Region): Lattice | null {
  const { size, column, row } = region;
  if (size === 0) return null;
  const range = (values: Int32Array) =>
    values.reduce(([a, b], v) => [Math.min(a, v), Math.max(b, v)] as const, [values[0]!, values[0]!] as const);
  const [columnFirst, columnLast] = range(column);
  const [rowFirst, rowLast] = range(row);
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

function agree(edges: Float64Array, at: number, value: number): boolean {
  if (edges[at] === -1) edges[at] = value;
  return edges[at] === value;
}

/** Panels and pixels in the columns before c and rows before r, at c * (rows + 1) + r. */
function sumsBefore(region: Region, lattice: Lattice): { panels: Float64Array; pixels: Float64Array } {
  const columns = lattice.left.length;
  const rows = lattice.top.length;
  const panels = new Float64Array((columns + 1) * (rows + 1));
  const pixels = new Float64Array((columns + 1) * (rows + 1));
  for (let cell = 0; cell < region.size; cell++) {
    const at = (region.column[cell]! - lattice.columnFirst + 1) * (rows + 1) + region.row[cell]! - lattice.rowFirst + 1;
    panels[at] = 1;
    pixels[at] = region.pixels[cell]!;
  }
  for (const sums of [panels, pixels]) {
    for (let c = 1; c <= columns; c++) {
      for (let r = 1; r <= rows; r++) {
        const at = c * (rows + 1) + r;
        sums[at] = sums[at]! + sums[at - 1]! + sums[at - rows - 1]! - sums[at - rows - 2]!;
      }
    }
  }
  return { panels, pixels };
}
