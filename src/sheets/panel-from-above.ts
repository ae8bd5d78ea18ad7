import type { PointMm, WallResult } from '../calc/walls/wall-result';
import { columnCorners } from './column-corners';
import { ceilingPanelAt, latticeFrame } from './lattice-frame';
import type { StageParts } from './stage-parts';

/** How far beside a wall still picks it, so that a thin line is easy to hit. */
const reachMm = 250;

/**
 * Number of the panel at a point of the plan: of a wall's column the panel in `row` (the lowest where it has none there),
 * else of a ceiling. -1 where there is nothing.
 */
export function panelFromAbove(parts: StageParts, xMm: number, yMm: number, row: number): number {
  for (const wall of parts.walls) {
    const column = columnAt(wall, xMm, yMm);
    if (column > 0) {
      const local = panelInColumn(wall, column, row);
      if (local >= 0) return offsetOf(parts, wall.wallId) + local;
    }
  }
  for (const ceiling of parts.ceilings) {
    const frame = latticeFrame(ceiling.table);
    const local = frame === null ? -1 : ceilingPanelAt(ceiling.table, frame, xMm, yMm);
    if (local >= 0) return offsetOf(parts, ceiling.ceilingId) + local;
  }
  return -1;
}

function offsetOf({ surfaces }: StageParts, surfaceId: string): number {
  const index = surfaces.surfaces.findIndex((table) => table.surfaceId === surfaceId);
  return surfaces.offsets[index] ?? 0;
}

function columnAt(wall: WallResult, xMm: number, yMm: number): number {
  let nearest = 0;
  let least = reachMm;
  for (let column = 1; column <= wall.columns; column++) {
    const corners = columnCorners(wall, column);
    const distance = Math.min(
      distanceToSegment(xMm, yMm, corners.frontLeft, corners.frontRight),
      distanceToSegment(xMm, yMm, corners.backLeft, corners.backRight),
    );
    if (distance >= least) continue;
    least = distance;
    nearest = column;
  }
  return nearest;
}

function panelInColumn({ table }: WallResult, column: number, row: number): number {
  const wanted = table.at[(column - 1) * table.rows + row - 1] ?? -1;
  if (row >= 1 && row <= table.rows && wanted >= 0) return wanted;
  for (let r = 0; r < table.rows; r++) {
    const local = table.at[(column - 1) * table.rows + r]!;
    if (local >= 0) return local;
  }
  return -1;
}

function distanceToSegment(xMm: number, yMm: number, a: PointMm, b: PointMm): number {
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const along = ((xMm - a.xMm) * dx + (yMm - a.yMm) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.max(0, Math.min(1, along));
  return Math.hypot(xMm - a.xMm - t * dx, yMm - a.yMm - t * dy);
}
