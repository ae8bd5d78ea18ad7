import type { Ceiling } from '../../plan/ceiling';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import { newTable } from '../surfaces/new-table';
import { panelsLeft } from '../surfaces/panels-left';
import type { WallResult, WallsResults } from '../walls/wall-result';
import { type CeilingAxes, ceilingAxes } from './ceiling-axes';
import type { CeilingResult, CeilingsResults } from './ceiling-result';
import { coveredAreaM2 } from './covered-area';
import { fillCeilingTable } from './fill-ceiling-table';
import { firstRing } from './first-ring';
import { type LatticeCeiling, latticeCeiling } from './lattice-ceiling';
import { outlineInPlan } from './outline-in-plan';
import { wallGap } from './wall-gap';

/**
 * Every ceiling's panels, cover and gaps to the walls. A ceiling that cannot be laid out, or that has no panel, gives an
 * empty table; checkCeilings says why. Panels of walls come first in what the plan may have in all.
 */
export function layOutCeilings(
  ceilings: readonly Ceiling[],
  shapes: readonly PanelShape[],
  walls: WallsResults,
): CeilingsResults {
  const byId = panelsById(shapes);
  let left = panelsLeft(walls);
  return {
    ceilings: ceilings.map((ceiling) => {
      const laid = latticeCeiling(ceiling, byId, left);
      if ('kind' in laid) return emptyCeiling(ceiling);
      left -= laid.clipped.count;
      return layOutCeiling(ceiling, laid, walls.walls);
    }),
  };
}

function layOutCeiling(ceiling: Ceiling, laid: LatticeCeiling, walls: readonly WallResult[]): CeilingResult {
  const { type, lattice, clipped } = laid;
  const axes = ceilingAxes(ceiling.place);
  const ring = firstRing(walls);
  return {
    ceilingId: ceiling.id,
    letter: ceiling.letter,
    name: ceiling.name,
    table: fillCeilingTable(ceiling, laid, axes),
    firstLatticeColumn: clipped.firstI,
    firstLatticeRow: clipped.firstJ,
    outlineMm: outlineInPlan(ceiling.outline, axes),
    areaM2: (clipped.count * type.widthMm * type.heightMm) / 1e6,
    pixels: clipped.count * type.pixelsWide * type.pixelsHigh,
    coverShare:
      ring &&
      coveredAreaM2(clipped, lattice, axes, ring.centre, ring.radiusMm) / ((Math.PI * ring.radiusMm ** 2) / 1e6),
    ...gaps(laid, axes, walls),
  };
}

function gaps({ clipped, lattice }: LatticeCeiling, axes: CeilingAxes, walls: readonly WallResult[]) {
  const found = walls.flatMap((wall) => {
    const gap = wallGap(clipped, lattice, axes, wall.frontMm);
    return gap === null ? [] : [{ wall, gap }];
  });
  const nearest = found.reduce<(typeof found)[number] | null>(
    (best, one) => (best === null || one.gap.least.distance < best.gap.least.distance ? one : best),
    null,
  );
  const ring = firstRing(walls);
  const round = found.find(({ wall }) => wall.wallId === ring?.wallId) ?? nearest;
  return { gapLeastMm: nearest?.gap.least.distance ?? null, gapGreatestMm: round?.gap.greatest.distance ?? null };
}

function emptyCeiling(ceiling: Ceiling): CeilingResult {
  return {
    ceilingId: ceiling.id,
    letter: ceiling.letter,
    name: ceiling.name,
    table: newTable(ceiling, 'ceiling', [], { count: 0, columns: 0, rows: 0 }, { width: 0, height: 0 }),
    firstLatticeColumn: 0,
    firstLatticeRow: 0,
    outlineMm: outlineInPlan(ceiling.outline, ceilingAxes(ceiling.place)),
    areaM2: 0,
    pixels: 0,
    coverShare: null,
    gapLeastMm: null,
    gapGreatestMm: null,
  };
}
