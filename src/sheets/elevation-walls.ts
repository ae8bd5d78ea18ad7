import type { WallResult } from '../calc/walls/wall-result';
import type { Stroke } from './drawing';
import { type ElevationSlice, elevationSlices } from './elevation-slices';
import type { ElevationView } from './elevation-view';
import { LineBuilder } from './line-builder';
import { layOutUnrolled } from './unrolled-grid';

/** Heights of the edges of a wall's rows above the floor. */
export function rowEdgesMm({ table }: Pick<WallResult, 'table'>): Float64Array {
  const all = [{ firstColumn: 1, columns: table.columns }];
  return layOutUnrolled(table, 'inside', all, { aboveMm: 0, belowMm: 0 }).edgesMm;
}

interface Pens {
  /** Where one of two places holds a panel, or both do and one stands behind the other. */
  readonly edge: LineBuilder;
  /** Between panels that touch. */
  readonly joint: LineBuilder;
}

/** Walls in a level view: the edges of what shows of them, and hairlines between panels that touch. y is minus the height. */
export function drawElevationWalls(walls: readonly WallResult[], view: ElevationView): readonly Stroke[] {
  const standing = walls.filter(({ table }) => table.count > 0);
  const edges = new Map(standing.map((wall) => [wall, rowEdgesMm(wall)]));
  const pens: Pens = { edge: new LineBuilder(), joint: new LineBuilder() };
  for (const run of slicesByWall(elevationSlices(standing, view))) {
    const edgesMm = edges.get(run[0]!.wall)!;
    drawLevelEdges(pens, run, edgesMm);
    for (let i = 0; i <= run.length; i++) {
      const [left, right] = [run[i - 1], run[i]];
      if (left !== undefined && right !== undefined && right.fromMm - left.toMm < 1) {
        drawUpright(pens, right.fromMm, edgesMm, left, right);
      } else {
        if (left !== undefined) drawUpright(pens, left.toMm, edgesMm, left, null);
        if (right !== undefined) drawUpright(pens, right.fromMm, edgesMm, null, right);
      }
    }
  }
  const width = Math.max(1, ...standing.map(({ columnWidthMm }) => columnWidthMm));
  return [
    { layer: 'grid', pen: 'faint', weight: 'hair', dash: 'solid', leastScale: 4 / width, lines: pens.joint.build() },
    { layer: 'wall', pen: 'ink', weight: 'heavy', dash: 'solid', leastScale: 0, lines: pens.edge.build() },
  ];
}

/** Lower and upper edges of rows, each as long as it goes on in one pen. */
function drawLevelEdges(pens: Pens, run: readonly ElevationSlice[], edgesMm: Float64Array): void {
  for (let edge = 0; edge < edgesMm.length; edge++) {
    const y = -edgesMm[edge]!;
    let pen: LineBuilder | null = null;
    let [from, until] = [0, Number.NEGATIVE_INFINITY];
    for (const slice of run) {
      const here = penBetween(pens, shows(slice, edge, edgesMm), shows(slice, edge + 1, edgesMm), true);
      if (here !== pen || slice.fromMm - until >= 1) {
        pen?.segment(from, y, until, y);
        from = slice.fromMm;
      }
      pen = here;
      until = slice.toMm;
    }
    pen?.segment(from, y, until, y);
  }
}

/** The line between two slices, or at the end of one, each stretch of rows in its pen. */
function drawUpright(
  pens: Pens,
  x: number,
  edgesMm: Float64Array,
  left: ElevationSlice | null,
  right: ElevationSlice | null,
): void {
  const touching = left !== null && right !== null && Math.abs(left.column - right.column) <= 1;
  let pen: LineBuilder | null = null;
  let since = 1;
  for (let row = 1; row <= edgesMm.length; row++) {
    const isLeft = left !== null && shows(left, row, edgesMm);
    const isRight = right !== null && shows(right, row, edgesMm);
    const here = penBetween(pens, isLeft, isRight, touching);
    if (here === pen) continue;
    pen?.segment(x, -edgesMm[since - 1]!, x, -edgesMm[row - 1]!);
    since = row;
    pen = here;
  }
}

function penBetween({ edge, joint }: Pens, one: boolean, other: boolean, touching: boolean): LineBuilder | null {
  if (one && other) return touching ? joint : edge;
  return one || other ? edge : null;
}

/** Whether a slice shows a panel in this row; rows beyond the wall hold none. */
function shows({ wall: { table }, column, overMm }: ElevationSlice, row: number, edgesMm: Float64Array): boolean {
  if (row < 1 || row > table.rows || edgesMm[row]! <= overMm + 0.5) return false;
  return table.at[(column - 1) * table.rows + row - 1]! >= 0;
}

/** The slices of each wall, from the left. */
function slicesByWall(slices: readonly ElevationSlice[]): Iterable<readonly ElevationSlice[]> {
  const runs = new Map<WallResult, ElevationSlice[]>();
  for (const slice of slices) {
    const run = runs.get(slice.wall);
    if (run === undefined) runs.set(slice.wall, [slice]);
    else run.push(slice);
  }
  return runs.values();
}
