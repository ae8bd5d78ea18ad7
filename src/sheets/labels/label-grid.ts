import type { Box } from '../drawing';
import { type PaperId, paperById } from '../pages/papers';

/** How labels lie on a sheet: rows and columns of equal labels, margins at the paper's edges, gaps between labels. */
export interface LabelGrid {
  readonly paper: PaperId;
  readonly columns: number;
  readonly rows: number;
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  /** Between two columns, and between two rows. */
  readonly acrossMm: number;
  readonly downMm: number;
}

/** Labels below this size hold no text that anybody could read (common practice, no source). */
const leastMm = { width: 8, height: 4 } as const;

/** Width and height of one label; null where margins and gaps leave no room for one. */
export function labelSize(grid: LabelGrid): { readonly widthMm: number; readonly heightMm: number } | null {
  const paper = paperById(grid.paper);
  const along = (paperMm: number, margins: number, gaps: number, count: number) =>
    (paperMm - margins - gaps * (count - 1)) / count;
  const widthMm = along(paper.widthMm, grid.leftMm + grid.rightMm, grid.acrossMm, grid.columns);
  const heightMm = along(paper.heightMm, grid.topMm + grid.bottomMm, grid.downMm, grid.rows);
  return widthMm >= leastMm.width && heightMm >= leastMm.height ? { widthMm, heightMm } : null;
}

/** Box of a label on its sheet, counted from 0 along the rows. */
export function labelBox(grid: LabelGrid, size: NonNullable<ReturnType<typeof labelSize>>, place: number): Box {
  const leftMm = grid.leftMm + (place % grid.columns) * (size.widthMm + grid.acrossMm);
  const topMm = grid.topMm + Math.floor(place / grid.columns) * (size.heightMm + grid.downMm);
  return { leftMm, topMm, rightMm: leftMm + size.widthMm, bottomMm: topMm + size.heightMm };
}
