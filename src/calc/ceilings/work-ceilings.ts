import type { Ceiling } from '../../plan/ceiling';
import type { Source, Step } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import type { WallResult, WallsResults } from '../walls/wall-result';
import { ceilingAxes } from './ceiling-axes';
import type { CeilingResult, CeilingsResults } from './ceiling-result';
import { coveredAreaM2 } from './covered-area';
import { firstRing } from './first-ring';
import { type LatticeCeiling, latticeCeiling } from './lattice-ceiling';
import { type WallGap, wallGap } from './wall-gap';

const clippedBy: Source = {
  kind: 'given',
  text: 'the ceiling’s lattice, clipped to its outline by its rule, less its holes',
};
const sheet: Source = { kind: 'sheet', text: 'size and pixels from the panel’s sheet, after its turn' };
const circle: Source = { kind: 'source', text: 'area of a circle, any handbook of mathematics' };
const nearest: Source = {
  kind: 'practice',
  text: 'between a column’s face and the panel nearest to it, in the ceiling’s own axes',
};

/** How every headline figure of the ceilings comes about. `results` are those of the same ceilings, panels and walls. */
export function workCeilings(
  ceilings: readonly Ceiling[],
  shapes: readonly PanelShape[],
  walls: WallsResults,
  results: CeilingsResults,
): Step[] {
  const byId = panelsById(shapes);
  return ceilings.flatMap((ceiling, i) => {
    const result = results.ceilings[i]!;
    if (result.table.count === 0) return [];
    const laid = latticeCeiling(ceiling, byId, result.table.count);
    if ('kind' in laid) return [];
    return [
      ...workPanels(result),
      ...workCover(ceiling, laid, result, walls.walls),
      ...workGaps(ceiling, laid, result, walls.walls),
    ];
  });
}

function workPanels({ letter, table, areaM2, pixels }: CeilingResult): Step[] {
  const type = table.types[0]!;
  const panels = table.count;
  return [
    {
      figure: `panels of ${letter}`,
      symbol: 'panels',
      expression: 'columns * rows - leftOut',
      numbers: { columns: table.columns, rows: table.rows, leftOut: table.columns * table.rows - panels },
      value: panels,
      unit: 'count',
      source: clippedBy,
    },
    {
      figure: `area of ${letter}`,
      symbol: 'area',
      expression: 'panels * width * height / 10^6',
      numbers: { panels, width: type.widthMm, height: type.heightMm },
      value: areaM2,
      unit: 'm2',
      source: sheet,
    },
    {
      figure: `pixels of ${letter}`,
      symbol: 'pixels',
      expression: 'panels * wide * high',
      numbers: { panels, wide: type.pixelsWide, high: type.pixelsHigh },
      value: pixels,
      unit: 'px',
      source: sheet,
    },
  ];
}

function workCover(
  ceiling: Ceiling,
  { clipped, lattice }: LatticeCeiling,
  result: CeilingResult,
  walls: readonly WallResult[],
): Step[] {
  const ring = firstRing(walls);
  if (ring === null || result.coverShare === null) return [];
  const over = coveredAreaM2(clipped, lattice, ceilingAxes(ceiling.place), ring.centre, ring.radiusMm);
  return [
    {
      figure: `cover of ${ceiling.letter}`,
      symbol: 'cover',
      expression: 'over / (pi * radius^2 / 10^6)',
      numbers: { over, radius: ring.radiusMm },
      value: result.coverShare,
      unit: 'share',
      source: circle,
    },
  ];
}

function workGaps(ceiling: Ceiling, laid: LatticeCeiling, result: CeilingResult, walls: readonly WallResult[]): Step[] {
  if (result.gapLeastMm === null || result.gapGreatestMm === null) return [];
  const axes = ceilingAxes(ceiling.place);
  const gaps = walls.flatMap((wall) => wallGap(laid.clipped, laid.lattice, axes, wall.frontMm) ?? []);
  const least = gaps.find((gap) => gap.least.distance === result.gapLeastMm)?.least;
  const greatest = gaps.find((gap) => gap.greatest.distance === result.gapGreatestMm)?.greatest;
  return [
    ...(least ? [workGap(`least gap of ${ceiling.letter}`, least)] : []),
    ...(greatest ? [workGap(`greatest gap of ${ceiling.letter}`, greatest)] : []),
  ];
}

function workGap(figure: string, { distance, onEdge, onPlace }: WallGap['least']): Step {
  return {
    figure,
    symbol: 'gap',
    expression: 'sqrt((wallU - panelU)^2 + (wallV - panelV)^2)',
    numbers: { wallU: onEdge[0], wallV: onEdge[1], panelU: onPlace[0], panelV: onPlace[1] },
    value: distance,
    unit: 'mm',
    source: nearest,
  };
}
