import type { SurfaceTable } from '../calc/surfaces/surface-table';
import { degrees, toRadians } from '../units/angle';

/**
 * A ceiling's lattice in plan: the point `u` along its columns and `v` along its rows lies at
 * (originX + u columnX + v rowX, originY + u columnY + v rowY). u and v are 0 at the outer corner of column 1, row 1.
 */
export interface LatticeFrame {
  readonly originXMm: number;
  readonly originYMm: number;
  readonly columnX: number;
  readonly columnY: number;
  readonly rowX: number;
  readonly rowY: number;
  readonly columnWidthMm: number;
  readonly rowHeightMm: number;
}

/** The way in which columns and rows count is read off the panels themselves: the heading alone leaves it open. */
export function latticeFrame(table: SurfaceTable): LatticeFrame | null {
  const type = table.types[0];
  if (type === undefined || table.count === 0) return null;
  const heading = toRadians(degrees(table.headingDeg[0]!));
  const alongX = Math.cos(heading);
  const alongY = Math.sin(heading);
  let columnSign = 0;
  let rowSign = 0;
  for (let i = 1; i < table.count && (columnSign === 0 || rowSign === 0); i++) {
    const dx = table.xMm[i]! - table.xMm[0]!;
    const dy = table.yMm[i]! - table.yMm[0]!;
    const columns = table.column[i]! - table.column[0]!;
    const rows = table.row[i]! - table.row[0]!;
    if (columns !== 0) columnSign = Math.sign((dx * alongX + dy * alongY) * columns) || columnSign;
    if (rows !== 0) rowSign = Math.sign((dy * alongX - dx * alongY) * rows) || rowSign;
  }
  // One column or one row only: as an unturned ceiling counts, seen from below.
  const columnX = (columnSign || -1) * alongX;
  const columnY = (columnSign || -1) * alongY;
  const rowX = -(rowSign || 1) * alongY;
  const rowY = (rowSign || 1) * alongX;
  const u = (table.column[0]! - 0.5) * type.widthMm;
  const v = (table.row[0]! - 0.5) * type.heightMm;
  return {
    originXMm: table.xMm[0]! - u * columnX - v * rowX,
    originYMm: table.yMm[0]! - u * columnY - v * rowY,
    columnX,
    columnY,
    rowX,
    rowY,
    columnWidthMm: type.widthMm,
    rowHeightMm: type.heightMm,
  };
}

/** Index in the ceiling's table of the panel at a point of the plan, -1 where there is none. */
export function ceilingPanelAt(table: SurfaceTable, frame: LatticeFrame, xMm: number, yMm: number): number {
  const dx = xMm - frame.originXMm;
  const dy = yMm - frame.originYMm;
  const column = Math.floor((dx * frame.columnX + dy * frame.columnY) / frame.columnWidthMm);
  const row = Math.floor((dx * frame.rowX + dy * frame.rowY) / frame.rowHeightMm);
  if (column < 0 || column >= table.columns || row < 0 || row >= table.rows) return -1;
  return table.at[column * table.rows + row]!;
}
