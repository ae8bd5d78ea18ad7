import type { SurfaceTable } from '../../../calc/surfaces/surface-table';
import { panelFrames } from './panel-frame';

/** Edges of a surface where no further panel follows, on its face and on its back, in metres of the scene: 6 numbers a segment. */
export function rimSegments(table: SurfaceTable): Float32Array {
  const frameOf = panelFrames(table);
  const segments: number[] = [];
  const { columns, rows, at } = table;
  const has = (column: number, row: number) =>
    column >= 1 && column <= columns && row >= 1 && row <= rows && at[(column - 1) * rows + row - 1]! >= 0;
  for (let local = 0; local < table.count; local++) {
    const column = table.column[local]!;
    const row = table.row[local]!;
    const type = table.types[table.type[local]!]!;
    const frame = frameOf(local);
    const corner = (across: number, up: number, back: number): readonly [number, number, number] => {
      const along = (axis: 0 | 1 | 2) =>
        (frame.column[axis] * across * type.widthMm + frame.row[axis] * up * type.heightMm) / 2 -
        frame.front[axis] * back * type.depthMm;
      return [
        (table.xMm[local]! + along(0)) / 1000,
        (table.zMm[local]! + along(2)) / 1000,
        -(table.yMm[local]! + along(1)) / 1000,
      ];
    };
    const edge = (a: readonly [number, number], b: readonly [number, number]) => {
      for (const back of [0, 1]) segments.push(...corner(a[0], a[1], back), ...corner(b[0], b[1], back));
    };
    if (!has(column - 1, row)) edge([-1, -1], [-1, 1]);
    if (!has(column + 1, row)) edge([1, -1], [1, 1]);
    if (!has(column, row - 1)) edge([-1, -1], [1, -1]);
    if (!has(column, row + 1)) edge([-1, 1], [1, 1]);
  }
  return Float32Array.from(segments);
}
