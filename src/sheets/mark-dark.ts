import { panelAt } from '../calc/surfaces/panel-at';
import type { SurfaceSet, SurfaceTable } from '../calc/surfaces/surface-table';
import { type ColumnCorners, columnCorners } from './column-corners';
import type { Lines } from './drawing';
import { LineBuilder } from './line-builder';
import { outlineFromAbove } from './outline-from-above';
import type { StageParts } from './stage-parts';
import { columnLeftMm, rowTopMm, stripShowing, type UnrolledGrid } from './unrolled-grid';

/** Dark panels on a drawing: fields to shade and strokes across them, so that they read in black and white. */
export interface DarkMarks {
  readonly fields: Lines;
  readonly crosses: Lines;
}

/** Dark panels of one surface laid flat, each with its cross; panels of other surfaces are left out. */
export function markDarkUnrolled(grid: UnrolledGrid, offset: number, dark: Iterable<number>): DarkMarks {
  const { table } = grid;
  const fields = new LineBuilder();
  const crosses = new LineBuilder();
  for (const panel of dark) {
    const local = panel - offset;
    if (local < 0 || local >= table.count) continue;
    const column = table.column[local]!;
    const row = table.row[local]!;
    const strip = stripShowing(grid, local);
    if (strip === null) continue;
    const left = columnLeftMm(grid, strip, column);
    const right = left + grid.columnWidthMm;
    const [top, bottom] = [rowTopMm(grid, strip, row), rowTopMm(grid, strip, row - 1)];
    fields.rectangle(left, top, right, bottom);
    crosses.segment(left, top, right, bottom).segment(left, bottom, right, top);
  }
  return { fields: fields.build(true), crosses: crosses.build() };
}

/** How far the bar of a column that is dark from top to bottom stands out from the wall, towards the audience. */
const barMm = 900;

/**
 * Dark panels from above: a cross over a panel of a ceiling; before a column of a wall a bar, as long as the part of its
 * panels that is dark, crossed where all of them are and struck once where some are.
 */
export function markDarkFromAbove(parts: Pick<StageParts, 'surfaces' | 'walls'>, dark: Iterable<number>): DarkMarks {
  const fields = new LineBuilder();
  const crosses = new LineBuilder();
  const draw = ([a, b, c, d]: Quad, isWhole: boolean) => {
    fields
      .moveTo(...a)
      .lineTo(...b)
      .lineTo(...c)
      .lineTo(...d);
    crosses.segment(...a, ...c);
    if (isWhole) crosses.segment(...b, ...d);
  };
  const { overhead, columns } = sortDark(parts.surfaces, dark);
  for (const quad of quadsOf(outlineFromAbove(parts, overhead))) draw(quad, true);
  for (const { surface, column, panels } of columns.values()) {
    const wall = parts.walls.find(({ wallId }) => wallId === surface.surfaceId);
    if (wall === undefined) continue;
    const all = surface.at.subarray((column - 1) * surface.rows, column * surface.rows).filter((local) => local >= 0);
    draw(barBefore(columnCorners(wall, column), panels / all.length), panels === all.length);
  }
  return { fields: fields.build(true), crosses: crosses.build() };
}

type Point = readonly [xMm: number, yMm: number];
type Quad = readonly [Point, Point, Point, Point];

interface DarkColumn {
  readonly surface: SurfaceTable;
  readonly column: number;
  panels: number;
}

/** Dark panels of ceilings by their numbers, those of walls counted by column. */
function sortDark(surfaces: SurfaceSet, dark: Iterable<number>) {
  const overhead: number[] = [];
  const columns = new Map<string, DarkColumn>();
  for (const panel of dark) {
    const record = panelAt(surfaces, panel);
    if (record === null) continue;
    const { surface, column } = record;
    if (surface.kind === 'ceiling') {
      overhead.push(panel);
      continue;
    }
    const key = `${surface.surfaceId} ${column}`;
    const found = columns.get(key) ?? { surface, column, panels: 0 };
    found.panels += 1;
    columns.set(key, found);
  }
  return { overhead, columns };
}

/** y counts down in the drawing. */
function barBefore({ frontLeft, frontRight, outX, outY }: ColumnCorners, share: number): Quad {
  const [dx, dy] = [-outX * barMm * share, outY * barMm * share];
  return [
    [frontLeft.xMm, -frontLeft.yMm],
    [frontRight.xMm, -frontRight.yMm],
    [frontRight.xMm + dx, -frontRight.yMm + dy],
    [frontLeft.xMm + dx, -frontLeft.yMm + dy],
  ];
}

/** The four corners of every closed polyline. */
function quadsOf({ xyMm, ends }: Lines): readonly Quad[] {
  return Array.from(ends, (end) => {
    const corner = (back: number): Point => [xyMm[(end - back) * 2]!, xyMm[(end - back) * 2 + 1]!];
    return [corner(4), corner(3), corner(2), corner(1)];
  });
}
