import { pathColumns } from '../../plan/path-columns';
import type { Wall } from '../../plan/wall';
import { newTable } from '../surfaces/new-table';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { PathShape } from './shape-path';
import type { RowStack } from './stack-bands';
import { placeHoles } from './wall-holes';

/** One pass over the lattice, column by column from the left, rows from the floor. */
export function fillWallTable(wall: Wall, stack: RowStack, shape: PathShape): SurfaceTable {
  const columns = pathColumns(wall.path);
  const rows = stack.type.length;
  const left = new Uint8Array(columns * rows);
  for (const hole of placeHoles(wall)) {
    for (let c = hole.fromColumn; c < hole.toColumn; c++) left.fill(1, c * rows + hole.fromRow, c * rows + hole.toRow);
  }
  let count = 0;
  for (const one of left) count += 1 - one;
  const canvas = { width: columns * stack.pixelsWide, height: stack.pixelsHigh };
  const table = newTable(wall, 'wall', stack.types, { count, columns, rows }, canvas);
  const middleMm = stack.lowerEdgeMm.map((edge, r) => wall.baseMm + edge + stack.types[stack.type[r]!]!.heightMm / 2);
  const canvasTop = stack.pixelsBelow.map(
    (below, r) => stack.pixelsHigh - below - stack.types[stack.type[r]!]!.pixelsHigh,
  );
  let panel = 0;
  for (let c = 0; c < columns; c++) {
    const xMm = (shape.frontMm[c * 4]! + shape.frontMm[c * 4 + 2]!) / 2;
    const yMm = (shape.frontMm[c * 4 + 1]! + shape.frontMm[c * 4 + 3]!) / 2;
    for (let r = 0; r < rows; r++) {
      const place = c * rows + r;
      if (left[place] === 1) continue;
      table.at[place] = panel;
      table.column[panel] = c + 1;
      table.row[panel] = r + 1;
      table.type[panel] = stack.type[r]!;
      table.xMm[panel] = xMm;
      table.yMm[panel] = yMm;
      table.zMm[panel] = middleMm[r]!;
      table.headingDeg[panel] = shape.headingDeg[c]!;
      table.canvasX[panel] = c * stack.pixelsWide;
      table.canvasY[panel] = canvasTop[r]!;
      panel++;
    }
  }
  return table;
}
