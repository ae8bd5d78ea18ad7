import { panelAt } from '../calc/surfaces/panel-at';
import type { SurfaceTable } from '../calc/surfaces/surface-table';
import { columnCorners } from './column-corners';
import type { Lines } from './drawing';
import { type LatticeFrame, latticeFrame } from './lattice-frame';
import { LineBuilder } from './line-builder';
import type { StageParts } from './stage-parts';

/** Outlines in the drawing from above of these panels: of a ceiling's each by itself, of a wall's the whole columns. */
export function outlineFromAbove(parts: Pick<StageParts, 'surfaces' | 'walls'>, panels: readonly number[]): Lines {
  const lines = new LineBuilder();
  const frames = new Map<SurfaceTable, LatticeFrame | null>();
  const seen = new Set<string>();
  for (const panel of panels) {
    const record = panelAt(parts.surfaces, panel);
    if (record === null) continue;
    const { surface, column, row } = record;
    const wall = parts.walls.find((one) => one.wallId === surface.surfaceId);
    if (wall !== undefined) {
      const key = `${surface.surfaceId} ${column}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const { frontLeft, frontRight, backLeft, backRight } = columnCorners(wall, column);
      closed(lines, [frontLeft, frontRight, backRight, backLeft]);
      continue;
    }
    if (!frames.has(surface)) frames.set(surface, latticeFrame(surface));
    const frame = frames.get(surface);
    if (frame !== null && frame !== undefined) closed(lines, cell(frame, column, row));
  }
  return lines.build(true);
}

function cell(frame: LatticeFrame, column: number, row: number) {
  return (
    [
      [column - 1, row - 1],
      [column, row - 1],
      [column, row],
      [column - 1, row],
    ] as const
  ).map(([u, v]) => ({
    xMm: frame.originXMm + u * frame.columnWidthMm * frame.columnX + v * frame.rowHeightMm * frame.rowX,
    yMm: frame.originYMm + u * frame.columnWidthMm * frame.columnY + v * frame.rowHeightMm * frame.rowY,
  }));
}

function closed(lines: LineBuilder, corners: readonly { readonly xMm: number; readonly yMm: number }[]): void {
  corners.forEach(({ xMm, yMm }, i) => {
    if (i === 0) lines.moveTo(xMm, -yMm);
    else lines.lineTo(xMm, -yMm);
  });
}
