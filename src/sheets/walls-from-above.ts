import { walkwayEdge } from '../calc/walls/walkway-edge';
import type { PointMm, WallResult } from '../calc/walls/wall-result';
import type { Zone } from '../calc/zones/zone-result';
import { type ColumnCorners, columnCorners } from './column-corners';
import type { Fill, LabelSeries, Stroke } from './drawing';
import { LineBuilder } from './line-builder';
import { tintCount } from './tint-panels';

export interface WallsDrawing {
  readonly fills: readonly Fill[];
  readonly strokes: readonly Stroke[];
  readonly labels: readonly LabelSeries[];
}

/** Walls in plan with their panels' depth and true seams, the LED face heavy, borders between processors, column numbers. */
export function drawWallsFromAbove(
  walls: readonly WallResult[],
  zones: readonly Zone[],
  tinted: boolean,
  walkwayMm: number,
): WallsDrawing {
  const bodies = new LineBuilder();
  const faces = new LineBuilder();
  const borders = new LineBuilder();
  const walkway = new LineBuilder();
  const tints = Array.from({ length: tintCount }, () => new LineBuilder());
  const labels: LabelSeries[] = [];
  for (const wall of walls) {
    for (let column = 1; column <= wall.columns; column++) {
      const corners = columnCorners(wall, column);
      const zone = zones.find((one) => one.surfaceId === wall.wallId && holds(one, column));
      quad(bodies, corners);
      if (tinted && zone !== undefined) quad(tints[(zone.processor - 1) % tintCount]!, corners);
      faces.segment(corners.frontLeft.xMm, -corners.frontLeft.yMm, corners.frontRight.xMm, -corners.frontRight.yMm);
      if (zone !== undefined && zone.firstColumn === column && column > 1) border(borders, corners);
    }
    const edge = walkwayEdge(wall, walkwayMm);
    for (let i = 0; i < edge.length; i += 2) {
      if (i === 0) walkway.moveTo(edge[i]!, -edge[i + 1]!);
      else walkway.lineTo(edge[i]!, -edge[i + 1]!);
    }
    labels.push(...processorNames(wall, zones, walkwayMm), columnNumbers(wall));
  }
  const tintFills = tints.flatMap((lines, paint): readonly Fill[] =>
    lines.isEmpty ? [] : [{ layer: 'tint', paint, leastScale: 0, lines: lines.build(true) }],
  );
  const bodyLines = bodies.build(true);
  return {
    fills: [{ layer: 'wall', paint: 'sheet', leastScale: 0, lines: bodyLines }, ...tintFills],
    strokes: [
      ...(walkwayMm > 0
        ? [
            {
              layer: 'hall',
              pen: 'soft',
              weight: 'fine',
              dash: 'dashed',
              leastScale: 0,
              lines: walkway.build(),
            } as const,
          ]
        : []),
      { layer: 'wall', pen: 'soft', weight: 'fine', dash: 'solid', leastScale: 0.05, lines: bodyLines },
      { layer: 'wall', pen: 'ink', weight: 'cut', dash: 'solid', leastScale: 0, lines: faces.build() },
      { layer: 'zones', pen: 'ink', weight: 'heavy', dash: 'solid', leastScale: 0, lines: borders.build() },
    ],
    labels,
  };
}

function holds(zone: Zone, column: number): boolean {
  return zone.firstRow === 1 && column >= zone.firstColumn && column < zone.firstColumn + zone.columns;
}

function quad(lines: LineBuilder, { frontLeft, frontRight, backLeft, backRight }: ColumnCorners): void {
  lines
    .moveTo(frontLeft.xMm, -frontLeft.yMm)
    .lineTo(frontRight.xMm, -frontRight.yMm)
    .lineTo(backRight.xMm, -backRight.yMm)
    .lineTo(backLeft.xMm, -backLeft.yMm);
}

function moved(point: PointMm, { outX, outY }: ColumnCorners, mm: number): PointMm {
  return { xMm: point.xMm + outX * mm, yMm: point.yMm + outY * mm };
}

/** A stroke across the wall and a little beyond it on both sides, before a column. */
function border(lines: LineBuilder, corners: ColumnCorners): void {
  const depth = Math.hypot(corners.backLeft.xMm - corners.frontLeft.xMm, corners.backLeft.yMm - corners.frontLeft.yMm);
  const inner = moved(corners.frontLeft, corners, -350);
  const outer = moved(corners.frontLeft, corners, depth + 350);
  lines.segment(inner.xMm, -inner.yMm, outer.xMm, -outer.yMm);
}

function columnNumbers(wall: WallResult): LabelSeries {
  return {
    layer: 'texts',
    pen: 'soft',
    size: 'small',
    leastScale: 0,
    count: wall.columns,
    at: (i) => {
      const corners = columnCorners(wall, i + 1);
      return {
        text: `C${i + 1}`,
        short: `${i + 1}`,
        xMm: (corners.backLeft.xMm + corners.backRight.xMm) / 2,
        yMm: -(corners.backLeft.yMm + corners.backRight.yMm) / 2,
        asideX: corners.outX,
        asideY: -corners.outY,
        gap: 0.5,
      };
    },
    numberOf: (i) => i + 1,
  };
}

/** Pixels that 'Processor 12' takes in lettering of normal size. */
const namePx = 90;

/**
 * Outside the walkway, at the middle of each zone that stands on the wall's foot: whole names where a zone is as long as
 * one, and short ones, which give way to them.
 */
function processorNames(wall: WallResult, zones: readonly Zone[], walkwayMm: number): readonly LabelSeries[] {
  const standing = zones.filter((zone) => zone.surfaceId === wall.wallId && zone.firstRow === 1);
  const widestMm = Math.max(1, ...standing.map((zone) => zone.columns)) * wall.columnWidthMm;
  const series = (name: string, leastScale: number): LabelSeries => ({
    layer: 'zones',
    pen: 'ink',
    size: 'normal',
    leastScale,
    count: standing.length,
    at: (i) => {
      const zone = standing[i]!;
      const middle = Math.min(wall.columns, zone.firstColumn + Math.floor(zone.columns / 2));
      const corners = columnCorners(wall, middle);
      const point = moved(corners.backLeft, corners, walkwayMm);
      return {
        text: `${name}${zone.processor}`,
        xMm: point.xMm,
        yMm: -point.yMm,
        asideX: corners.outX,
        asideY: -corners.outY,
        gap: 0.6,
      };
    },
    numberOf: (i) => i,
  });
  return [series('Processor ', namePx / widestMm), series('P', 0)];
}
