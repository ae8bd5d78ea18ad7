import type { SurfaceTable } from '../surfaces/surface-table';
import type { RowEdges } from './split-rows';

/** Columns of one strip of rows as zones are cut from them: sums up to a column, and edges on the canvas. */
export interface Strip {
  readonly firstRow: number;
  readonly rows: number;
  readonly canvasHeight: number;
  /** Panels and pixels in the columns before column c (from 0). */
  readonly panelsBefore: Uint32Array;
  readonly pixelsBefore: Float64Array;
  /** Left edge of the first column from c on that has panels; right edge of the last one before c. */
  readonly leftFrom: Float64Array;
  readonly rightBefore: Float64Array;
}

/** Measures the rows from..to - 1 (from 0) of a surface. */
export function measureStrip(table: SurfaceTable, from: number, to: number): Strip {
  const { columns, rows } = table;
  const panelsBefore = new Uint32Array(columns + 1);
  const pixelsBefore = new Float64Array(columns + 1);
  const leftFrom = new Float64Array(columns + 1).fill(Number.POSITIVE_INFINITY);
  const rightBefore = new Float64Array(columns + 1);
  let top = Number.POSITIVE_INFINITY;
  let bottom = 0;
  for (let c = 0; c < columns; c++) {
    let panels = 0;
    let pixels = 0;
    let left = Number.POSITIVE_INFINITY;
    let right = 0;
    for (let r = from; r < to; r++) {
      const panel = table.at[c * rows + r]!;
      if (panel < 0) continue;
      const { pixelsWide, pixelsHigh } = table.types[table.type[panel]!]!;
      const x = table.canvasX[panel]!;
      const y = table.canvasY[panel]!;
      panels++;
      pixels += pixelsWide * pixelsHigh;
      if (x < left) left = x;
      if (x + pixelsWide > right) right = x + pixelsWide;
      if (y < top) top = y;
      if (y + pixelsHigh > bottom) bottom = y + pixelsHigh;
    }
    panelsBefore[c + 1] = panelsBefore[c]! + panels;
    pixelsBefore[c + 1] = pixelsBefore[c]! + pixels;
    rightBefore[c + 1] = Math.max(rightBefore[c]!, right);
    leftFrom[c] = left;
  }
  for (let c = columns - 1; c >= 0; c--) leftFrom[c] = Math.min(leftFrom[c]!, leftFrom[c + 1]!);
  const canvasHeight = bottom > 0 ? bottom - top : 0;
  return { firstRow: from, rows: to - from, canvasHeight, panelsBefore, pixelsBefore, leftFrom, rightBefore };
}

/** Edges of every row of a surface on its canvas. */
export function rowEdges(table: SurfaceTable): RowEdges {
  const top = new Int32Array(table.rows).fill(-1);
  const bottom = new Int32Array(table.rows).fill(-1);
  for (let panel = 0; panel < table.count; panel++) {
    const row = table.row[panel]! - 1;
    const y = table.canvasY[panel]!;
    const end = y + table.types[table.type[panel]!]!.pixelsHigh;
    if (top[row]! < 0 || y < top[row]!) top[row] = y;
    if (end > bottom[row]!) bottom[row] = end;
  }
  return { top, bottom };
}
