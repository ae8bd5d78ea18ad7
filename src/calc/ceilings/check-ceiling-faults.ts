import type { Ceiling } from '../../plan/ceiling';
import type { Check } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { panelsLeft } from '../surfaces/panels-left';
import { MOST_PANELS } from '../surfaces/size-limits';
import type { WallsResults } from '../walls/wall-result';
import type { CeilingsResults } from './ceiling-result';
import { ceilingField, surfacePlace } from './judged-ceiling';
import { type CeilingFault, latticeCeiling } from './lattice-ceiling';

/** Why ceilings have no panels: a stop for each. Only those that came out empty are looked at again. */
export function checkCeilingFaults(
  ceilings: readonly Ceiling[],
  shapes: ReadonlyMap<string, PanelShape>,
  walls: WallsResults,
  results: CeilingsResults,
): Check[] {
  let left = panelsLeft(walls);
  return ceilings.flatMap((ceiling, index) => {
    const { count } = results.ceilings[index]!.table;
    left -= count;
    if (count > 0) return [];
    const laid = latticeCeiling(ceiling, shapes, left);
    return 'kind' in laid ? [checkFault(ceiling, index, laid)] : [];
  });
}

function checkFault(ceiling: Ceiling, index: number, fault: CeilingFault): Check {
  const { letter } = ceiling;
  const about = { chapter: 'ceilings', severity: 'stop', unit: 'count' } as const;
  if (fault.kind === 'panel-missing') {
    return {
      ...about,
      id: `ceilings.panel-missing.${letter}`,
      measured: 1,
      limit: 0,
      where: [surfacePlace(ceiling), ceilingField(index, 'panelId')],
      sentence: `Ceiling ${letter} cannot be laid out: its panel is not in the catalogue of this plan.`,
    };
  }
  if (fault.kind === 'no-panels') {
    return {
      ...about,
      id: `ceilings.no-panels.${letter}`,
      measured: 0,
      limit: 1,
      where: [surfacePlace(ceiling), ceilingField(index, 'outline'), ceilingField(index, 'rule')],
      sentence: `Ceiling ${letter} has no panel: none lies in its outline by its rule, holes left out.`,
    };
  }
  return {
    ...about,
    id: `ceilings.too-many.${letter}`,
    measured: fault.panels,
    limit: fault.left,
    where: [surfacePlace(ceiling), ceilingField(index, 'outline')],
    sentence:
      fault.panels === null
        ? `Ceiling ${letter} has more places under its outline than can be looked at; a plan may have {most} panels, and {limit} are left.`
        : `Ceiling ${letter} asks for {measured} panels; a plan may have {most} on all surfaces, and {limit} are left.`,
    values: { most: { value: MOST_PANELS, unit: 'count' } },
  };
}
