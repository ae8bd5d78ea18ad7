import type { Fill, Stroke } from './drawing';
import { LineBuilder } from './line-builder';
import { traceEdges } from './trace-edges';
import { columnLeftMm, rowTopMm, stripShowing, type UnrolledGrid } from './unrolled-grid';

export interface ChangeMarks {
  readonly stroke: Stroke;
  readonly triangles: Fill;
}

/** Side of a triangle as a share of a panel's width. */
const triangleShare = 0.3;

/**
 * Marks for panels that changed: a heavy dashed outline round each group of them that touch, with a triangle at the foot
 * of its highest panel, so that black and white says it too. `changed` by panel number, `offset` of the surface's first; null
 * where the drawing shows none of them.
 */
export function markChanges(grid: UnrolledGrid, offset: number, changed: Uint8Array): ChangeMarks | null {
  const isChanged = (local: number) =>
    local >= 0 && changed[offset + local] === 1 && stripShowing(grid, local) !== null;
  const outlines = traceEdges(grid, (a, b) => isChanged(a) !== isChanged(b));
  if (outlines.isEmpty) return null;
  const triangles = new LineBuilder();
  for (const local of groupHeads(grid, isChanged)) {
    const strip = stripShowing(grid, local)!;
    const side = grid.columnWidthMm * triangleShare;
    const left = columnLeftMm(grid, strip, grid.table.column[local]!) + side * 0.2;
    const foot = rowTopMm(grid, strip, grid.table.row[local]! - 1) - side * 0.2;
    triangles
      .moveTo(left, foot)
      .lineTo(left + side, foot)
      .lineTo(left + side / 2, foot - side * 0.87);
  }
  const layer = 'changes';
  return {
    stroke: { layer, pen: 'limit', weight: 'cut', dash: 'dashed', leastScale: 0, lines: outlines.build() },
    triangles: { layer, paint: 'limit', leastScale: 0, lines: triangles.build(true) },
  };
}

/** Of each group of changed panels that touch: its highest, of those the one of the lowest column. */
function groupHeads({ table }: UnrolledGrid, isChanged: (local: number) => boolean): readonly number[] {
  const seen = new Uint8Array(table.count);
  const heads: number[] = [];
  for (let first = 0; first < table.count; first++) {
    if (seen[first] === 1 || !isChanged(first)) continue;
    let head = first;
    const queue = [first];
    seen[first] = 1;
    for (let local = queue.pop(); local !== undefined; local = queue.pop()) {
      if (table.row[local]! > table.row[head]!) head = local;
      for (const next of neighboursOf(table, local)) {
        if (next < 0 || seen[next] === 1 || !isChanged(next)) continue;
        seen[next] = 1;
        queue.push(next);
      }
    }
    heads.push(head);
  }
  return heads;
}

/** The four panels beside one, -1 where there is none. */
function neighboursOf({ at, column, row, rows, columns }: UnrolledGrid['table'], local: number): readonly number[] {
  const [c, r] = [column[local]! - 1, row[local]! - 1];
  const place = c * rows + r;
  return [
    c > 0 ? at[place - rows]! : -1,
    c + 1 < columns ? at[place + rows]! : -1,
    r > 0 ? at[place - 1]! : -1,
    r + 1 < rows ? at[place + 1]! : -1,
  ];
}
