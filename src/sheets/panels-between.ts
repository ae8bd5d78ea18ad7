import type { SurfaceTable } from '../calc/surfaces/surface-table';

/**
 * Panels in the rectangle of columns and rows that has these two in its corners, by their index in the table, column by column from
 * below; holes are left out.
 */
export function panelsBetween({ column, row, rows, at }: SurfaceTable, one: number, other: number): readonly number[] {
  const [left, right] = [column[one]!, column[other]!].sort((a, b) => a - b);
  const [low, high] = [row[one]!, row[other]!].sort((a, b) => a - b);
  const found: number[] = [];
  for (let c = left!; c <= right!; c++) {
    for (let r = low!; r <= high!; r++) {
      const local = at[(c - 1) * rows + r - 1]!;
      if (local >= 0) found.push(local);
    }
  }
  return found;
}
