import type { SurfaceTable } from '../calc/surfaces/surface-table';
import { zoneOfPanels } from '../calc/zones/zone-of-panels';
import { counted } from '../units/counted';
import { dataChains, powerChains } from './chains';
import { cutCosts } from './cut-costs';
import { cutStrips } from './cut-strips';
import { drawChains } from './draw-chains';
import type { EdgeSide } from './draw-home-runs';
import { drawTints } from './draw-tints';
import { drawZones } from './draw-zones';
import type { Dimension, Drawing, Stroke } from './drawing';
import type { Format } from './format';
import { homeRunSide } from './home-run-side';
import { latticeSpan } from './lattice-span';
import { LineBuilder } from './line-builder';
import type { StageParts } from './stage-parts';
import { showsReach, surfaceLabels } from './surface-labels';
import { tintLegend } from './tint-legend';
import { noTint, type Tint, tintPanels } from './tint-panels';
import { traceEdges } from './trace-edges';
import {
  type From,
  groundMm,
  type LatticePart,
  layOutUnrolled,
  type StripLayout,
  type UnrolledGrid,
} from './unrolled-grid';

export interface UnrolledOptions {
  readonly surfaceId: string;
  readonly from: From;
  /** By circuit or leg: the drawing shows circuits in place of runs. */
  readonly tint: Tint;
  /** Strips that the surface is cut into, one under the other. */
  readonly strips: StripLayout;
  /** What is shown of the surface; left out: all of it. */
  readonly part?: LatticePart;
}

export interface UnrolledDrawing {
  readonly drawing: Drawing;
  readonly grid: UnrolledGrid;
  /** Number of the surface's first panel. */
  readonly offset: number;
}

/** A surface laid flat with its panels, zones and wiring; null where the plan has no such surface, or one without panels. */
export function drawUnrolled(parts: StageParts, options: UnrolledOptions, format: Format): UnrolledDrawing | null {
  const index = parts.surfaces.surfaces.findIndex((table) => table.surfaceId === options.surfaceId);
  const table = parts.surfaces.surfaces[index];
  if (table === undefined || table.count === 0) return null;
  const offset = parts.surfaces.offsets[index]!;
  const chains = showsPower(options.tint)
    ? powerChains(parts, options.tint === 'leg' ? 'leg' : 'circuit')
    : dataChains(parts);
  const zoneOf = zoneOfPanels(table, parts.zones);
  const part = options.part ?? { firstColumn: 1, columns: table.columns, firstRow: 1, rows: table.rows };
  const before = part.firstColumn - 1;
  const costOf = cutCosts(table, offset, zoneOf, chains.chainOf);
  const { count, widest } = options.strips;
  const strips = cutStrips(part.columns, count, options.from, (column) => costOf(before + column), widest).map(
    (strip) => ({
      ...strip,
      firstColumn: before + strip.firstColumn,
    }),
  );
  const grid = layOutUnrolled(table, options.from, strips, options.strips, part);
  const width = grid.columnWidthMm;

  const tints = tintPanels(parts, options.tint);
  const side = homeRunSide(table, parts.ceilingEntry, options.from);
  const wiring = drawChains(grid, offset, chains, side);
  const zones = drawZones(grid, parts.zones, zoneOf);
  const panels = traceEdges(grid, (a, b) => a >= 0 && b >= 0).build();
  const edges = traceEdges(grid, (a, b) => a < 0 !== b < 0).build();
  const fills = drawTints(grid, (local) => tints[offset + local] ?? noTint);
  const strokes: Stroke[] = [
    { layer: 'grid', pen: 'faint', weight: 'hair', dash: 'solid', leastScale: 4 / width, lines: panels },
    ...wiring.strokes,
    { layer: 'wall', pen: 'ink', weight: 'cut', dash: 'solid', leastScale: 0, lines: edges },
    ...zones.strokes,
    ...siteLines(grid, parts.reachMm),
  ];
  return {
    grid,
    offset,
    drawing: {
      title: title(table, options.part, format),
      box: boxOf(grid, side),
      fills,
      strokes,
      marks: wiring.marks,
      dimensions: heightDimensions(grid, side, format),
      labels: [...zones.labels, ...surfaceLabels(grid, side, parts.reachMm, format), ...wiring.labels],
      notes: [sideNote(table, options.from)],
      legend: options.tint === 'leg' ? tintLegend(parts, 'leg') : [],
    },
  };
}

/** How far beside a strip its dimension line runs, as a share of the space above it. */
const dimensionShare = 0.75;
/** The same where cables and their tags come from that side, and where the names of rows stand there. */
const dimensionShareBehind = { tags: 2.4, rows: 1.3 } as const;

function dimensionMm(grid: UnrolledGrid, side: EdgeSide): number {
  if (side === 'right') {
    return grid.aboveMm * dimensionShareBehind.tags + Math.max(0, grid.besideMm - grid.belowMm);
  }
  return grid.aboveMm * (side === 'left' ? dimensionShareBehind.rows : dimensionShare);
}

/** Circuits are drawn in place of runs where the panels are tinted by what feeds them. */
function showsPower(tint: Tint): boolean {
  return tint === 'circuit' || tint === 'leg';
}

/** The floor under a wall and the height that an adult reaches. */
function siteLines(grid: UnrolledGrid, reachMm: number): readonly Stroke[] {
  if (grid.table.kind !== 'wall') return [];
  const floor = new LineBuilder();
  const reach = new LineBuilder();
  const over = grid.aboveMm * dimensionShare * 1.2;
  for (const strip of grid.strips) {
    if (grid.firstRow === 1) floor.segment(0, strip.zeroMm, strip.widthMm + over / 2, strip.zeroMm);
    const y = strip.zeroMm - reachMm;
    if (showsReach(grid, strip, reachMm)) reach.segment(0, y, strip.widthMm + over, y);
  }
  return [
    { layer: 'hall', pen: 'ink', weight: 'medium', dash: 'solid', leastScale: 0, lines: floor.build() },
    { layer: 'limits', pen: 'limit', weight: 'medium', dash: 'dashed', leastScale: 0, lines: reach.build() },
  ];
}

/** Height of the surface on the right of its first strip, and its foot above the floor where it stands on something. */
function heightDimensions(grid: UnrolledGrid, side: EdgeSide, format: Format): readonly Dimension[] {
  const strip = grid.strips[0]!;
  const x = strip.widthMm + dimensionMm(grid, side);
  const line = (y1Mm: number, y2Mm: number): Dimension => ({
    x1Mm: x,
    y1Mm,
    x2Mm: x,
    y2Mm,
    text: format(Math.abs(y2Mm - y1Mm), 'mm'),
  });
  const high = line(strip.footMm, strip.topMm);
  return groundMm(grid, strip) - strip.footMm > 0.5 ? [high, line(strip.zeroMm, strip.footMm)] : [high];
}

function boxOf(grid: UnrolledGrid, side: EdgeSide) {
  const widest = Math.max(...grid.strips.map((strip) => strip.widthMm));
  const last = grid.strips.at(-1)!;
  return {
    leftMm: 0,
    topMm: 0,
    rightMm: widest + dimensionMm(grid, side),
    bottomMm: groundMm(grid, last) + grid.belowMm,
  };
}

function title(table: SurfaceTable, part: LatticePart | undefined, format: Format): string {
  const name = table.name === '' ? table.letter : `${table.letter} ${table.name}`;
  if (part !== undefined) {
    return `${name} unrolled: ${latticeSpan('C', part.firstColumn, part.columns)}, ${latticeSpan('R', part.firstRow, part.rows)}`;
  }
  const width = (table.types[0]?.widthMm ?? 0) * table.columns;
  return `${name} unrolled: ${counted(table.columns, 'column')} of ${counted(table.rows, 'row')}, ${format(width, 'mm')} along the face`;
}

function sideNote(table: SurfaceTable, from: From): string {
  if (table.kind === 'ceiling') {
    return from === 'inside'
      ? 'seen from below'
      : 'seen from above: left and right are swapped against the view from below';
  }
  return from === 'inside'
    ? 'seen from inside, facing the wall'
    : 'seen from behind: left and right are as the crew sees them';
}
