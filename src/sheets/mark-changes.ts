import type { Fill, Stroke } from './drawing';
import { LineBuilder } from './line-builder';
import { columnLeftMm, rowTopMm, type Strip, stripShowing, type UnrolledGrid } from './unrolled-grid';

export interface ChangeMarks {
  readonly stroke: Stroke;
  readonly triangles: Fill;
}

/** As shares of a panel's width: how far inside its edge the outline runs, the side of a triangle, and its rim. */
const shares = { inside: 0.07, side: 0.3, rim: 0.06 } as const;

/**
 * Marks for panels that changed: a heavy dashed outline just inside each group of them that touch, and a hollow triangle at the
 * foot of its highest panel: neither is like anything of the wiring, in black and white too. `changed` by panel number,
 * `offset` of the surface's first; null where the drawing shows none of them.
 */
export function markChanges(grid: UnrolledGrid, offset: number, changed: Uint8Array): ChangeMarks | null {
  const isChanged = (local: number) => local >= 0 && changed[offset + local] === 1;
  const outlines = new LineBuilder();
  for (let local = 0; local < grid.table.count; local++) {
    const strip = isChanged(local) ? stripShowing(grid, local) : null;
    if (strip !== null) outlinePanel(outlines, grid, strip, local, isChanged);
  }
  const triangles = new LineBuilder();
  for (const local of groupHeads(grid, (one) => isChanged(one) && stripShowing(grid, one) !== null)) {
    drawTriangle(triangles, grid, local);
  }
  if (triangles.isEmpty) return null;
  const layer = 'changes';
  return {
    stroke: { layer, pen: 'limit', weight: 'cut', dash: 'dashed', leastScale: 0, lines: outlines.build() },
    triangles: { layer, paint: 'limit', leastScale: 0, lines: triangles.build(true) },
  };
}

/** The sides of a panel beyond which nothing changed, drawn just inside; round corners they meet those of the next panel. */
function outlinePanel(
  lines: LineBuilder,
  grid: UnrolledGrid,
  strip: Strip,
  local: number,
  isChanged: (local: number) => boolean,
): void {
  const { table, columnWidthMm } = grid;
  const [column, row] = [table.column[local]!, table.row[local]!];
  const toRight = grid.from === 'inside' ? 1 : -1;
  const at = (right: number, up: number) => {
    const [c, r] = [column + right * toRight, row + up];
    return (
      c >= 1 && c <= table.columns && r >= 1 && r <= table.rows && isChanged(table.at[(c - 1) * table.rows + r - 1]!)
    );
  };
  const inside = columnWidthMm * shares.inside;
  const left = columnLeftMm(grid, strip, column);
  const middleX = left + columnWidthMm / 2;
  const [top, foot] = [rowTopMm(grid, strip, row), rowTopMm(grid, strip, row - 1)];
  const middleY = (top + foot) / 2;
  /** How far from the middle a side ends: inside a corner, at the edge where it goes on, beyond it round an inner corner. */
  const reach = (half: number, goesOn: boolean, turnsOut: boolean) =>
    half + (goesOn ? (turnsOut ? inside : 0) : -inside);
  for (const way of [1, -1]) {
    const [halfX, halfY] = [columnWidthMm / 2, (foot - top) / 2];
    if (!at(0, way)) {
      const y = middleY - way * (halfY - inside);
      lines.segment(middleX - reach(halfX, at(-1, 0), at(-1, way)), y, middleX + reach(halfX, at(1, 0), at(1, way)), y);
    }
    if (!at(way, 0)) {
      const x = middleX + way * (halfX - inside);
      lines.segment(x, middleY - reach(halfY, at(0, 1), at(way, 1)), x, middleY + reach(halfY, at(0, -1), at(way, -1)));
    }
  }
}

/** Low on the left of a panel; the inner triangle runs the other way round, so that it stays empty by either rule of filling. */
function drawTriangle(lines: LineBuilder, grid: UnrolledGrid, local: number): void {
  const strip = stripShowing(grid, local)!;
  const side = grid.columnWidthMm * shares.side;
  const rim = grid.columnWidthMm * shares.rim;
  const left = columnLeftMm(grid, strip, grid.table.column[local]!) + grid.columnWidthMm * shares.inside * 1.6;
  const foot = rowTopMm(grid, strip, grid.table.row[local]! - 1) - grid.columnWidthMm * shares.inside * 1.6;
  const height = side * 0.87;
  lines
    .moveTo(left, foot)
    .lineTo(left + side / 2, foot - height)
    .lineTo(left + side, foot)
    .moveTo(left + rim * 1.73, foot - rim)
    .lineTo(left + side - rim * 1.73, foot - rim)
    .lineTo(left + side / 2, foot - height + rim * 2);
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
