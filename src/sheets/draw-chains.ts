import { type ChainSpot, chainSpot } from './chain-spot';
import type { Chains } from './chains';
import { drawHomeRuns, type EdgeSide, type HomeRunEntry } from './draw-home-runs';
import type { Fill, LabelSeries, Stroke } from './drawing';
import { LineBuilder } from './line-builder';
import { panelsInPart } from './panels-in-part';
import { traceEdges } from './trace-edges';
import { rowTopMm, stripShowing, type UnrolledGrid } from './unrolled-grid';

export interface ChainDrawing {
  readonly marks: readonly Fill[];
  readonly strokes: readonly Stroke[];
  readonly labels: readonly LabelSeries[];
}

/**
 * Wiring of one surface: a heavy outline round each chain, a thin line through it with one arrow midway, a square on its
 * first panel, and the home run that comes there from an edge of the surface; where a chain returns, a diamond on its last
 * panel and the cable that leaves from there. `offset` is the number of the surface's
 * first panel. Panels of one chain that lie on two strips are not joined across the paper.
 */
export function drawChains(grid: UnrolledGrid, offset: number, chains: Chains, side: EdgeSide): ChainDrawing {
  const { table } = grid;
  const { chainOf, order } = chains;
  const width = grid.columnWidthMm;
  const outlines = traceEdges(grid, (a, b) => a >= 0 && b >= 0 && chainOf[offset + a] !== chainOf[offset + b]);
  const through = new LineBuilder();
  const arrows = new LineBuilder();
  const squares = new LineBuilder();
  const homeRunsTo: HomeRunEntry[] = [];

  for (const chain of chains.list) {
    if (chain.surfaceId !== table.surfaceId || chain.count === 0) continue;
    const arrowAt = Math.floor(chain.count / 2);
    let before: ChainSpot | null = null;
    for (let place = 0; place < chain.count; place++) {
      const local = order[chain.start + place]! - offset;
      const spot: ChainSpot | null = chainSpot(grid, local);
      if (spot === null) {
        before = null;
        continue;
      }
      if (before !== null && before.strip === spot.strip) {
        through.lineTo(spot.x, spot.y);
        if (place === arrowAt) drawArrow(arrows, before, spot, width * 0.13);
      } else through.moveTo(spot.x, spot.y);
      const homeRun = (tag: string, shortTag: string | null): HomeRunEntry => ({
        xMm: spot.x,
        yMm: spot.y,
        strip: spot.strip,
        column: table.column[local]!,
        row: table.row[local]!,
        tag,
        shortTag,
        number: chain.number,
      });
      if (place === 0) {
        const half = width * 0.085;
        squares.rectangle(spot.x - half, spot.y - half, spot.x + half, spot.y + half);
        homeRunsTo.push(homeRun(chain.tag, chain.shortTag));
      }
      if (place === chain.count - 1 && chain.returnTag !== null) {
        drawDiamond(squares, spot, width * 0.12);
        homeRunsTo.push(homeRun(`to ${chain.returnTag}`, null));
      }
      before = spot;
    }
  }
  const homeRuns = drawHomeRuns(grid, homeRunsTo, side);
  return {
    marks: [
      { layer: 'runs', paint: 'ink', leastScale: 9 / width, lines: arrows.build(true) },
      { layer: 'homeruns', paint: 'accent', leastScale: 6 / width, lines: squares.build(true) },
    ],
    strokes: [
      { layer: 'runs', pen: 'soft', weight: 'fine', dash: 'solid', leastScale: 6 / width, lines: through.build() },
      { layer: 'runs', pen: 'ink', weight: 'heavy', dash: 'solid', leastScale: 3 / width, lines: outlines.build() },
      homeRuns.stroke,
    ],
    labels: [...homeRuns.tags, placeNumbers(grid, offset, chains)],
  };
}

/** A filled arrow head in the middle of the panel that the chain has come to. */
function drawArrow(arrows: LineBuilder, from: ChainSpot, to: ChainSpot, sizeMm: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return;
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const { x, y } = to;
  const back = sizeMm * 0.75;
  const half = sizeMm * 0.85;
  arrows
    .moveTo(x + ux * sizeMm, y + uy * sizeMm)
    .lineTo(x - ux * back - uy * half, y - uy * back + ux * half)
    .lineTo(x - ux * back + uy * half, y - uy * back - ux * half);
}

function drawDiamond(marks: LineBuilder, { x, y }: ChainSpot, halfMm: number): void {
  marks
    .moveTo(x, y - halfMm)
    .lineTo(x + halfMm, y)
    .lineTo(x, y + halfMm)
    .lineTo(x - halfMm, y);
}

/** Height of small lettering that the numbers are laid out for, and lines of it that a panel then holds. */
const numberSizePx = 10;
const linesOfText = 4.5;

/** Place of each panel on its chain, entry 1, low in the panel beside its line, once the panels are large enough. */
function placeNumbers(grid: UnrolledGrid, offset: number, chains: Chains): LabelSeries {
  const { table } = grid;
  const placeOf = new Uint16Array(table.count);
  for (const chain of chains.list) {
    if (chain.surfaceId !== table.surfaceId) continue;
    for (let place = 0; place < chain.count; place++) placeOf[chains.order[chain.start + place]! - offset] = place + 1;
  }
  return {
    layer: 'runs',
    pen: 'soft',
    size: 'small',
    leastScale: (linesOfText * numberSizePx) / grid.columnWidthMm,
    count: table.count,
    at: (local) => {
      const spot = chainSpot(grid, local);
      const strip = stripShowing(grid, local);
      return {
        text: spot === null || placeOf[local] === 0 ? '' : `${placeOf[local]}`,
        xMm: spot?.x ?? 0,
        yMm: strip === null ? 0 : rowTopMm(grid, strip, table.row[local]! - 1),
        asideX: 1,
        asideY: -1,
        gap: 0.2,
      };
    },
    numberOf: null,
    near: (part) => panelsInPart(grid, part),
  };
}
