import type { Check, Place } from '../chapter';
import type { CulpritKind } from './culprit';
import type { FaultsResults, SurfaceWorst } from './fault-result';

/** One box that darkens more than this much of a wall leaves nothing to work with. Common practice, no source. */
const mostShare = 0.5;

/** How much of each surface one failure darkens, and whether a cut cable darkens what stands behind it. */
export function checkFaults(_: unknown, results: FaultsResults): Check[] {
  return [...results.surfaces.map(checkSurface), ...checkCut(results)];
}

function checkSurface({ letter, name, kind, panels, panelsOfSurface }: SurfaceWorst): Check {
  const share = panels / panelsOfSurface;
  const isLarge = share > mostShare;
  return {
    id: `faults.surface.${letter}`,
    chapter: 'faults',
    severity: isLarge ? 'watch' : 'offer',
    measured: share,
    limit: isLarge ? mostShare : null,
    unit: 'share',
    where: [placeOf(kind, name)],
    sentence: isLarge
      ? `One failure, of ${name}, darkens {measured} of surface ${letter}: more than {limit}, {panels} panels.`
      : `The worst single failure of equipment on surface ${letter}, of ${name}, darkens {measured}, {panels} panels. Not stated: how much one failure may darken.`,
    values: { panels: { value: panels, unit: 'count' } },
  };
}

function checkCut({ runs, runsWithReturn, worstCut }: FaultsResults): Check[] {
  if (worstCut === null) return [];
  const isKept = worstCut.panels === 0;
  return [
    {
      id: 'faults.cut',
      chapter: 'faults',
      severity: isKept ? 'pass' : 'offer',
      measured: worstCut.panels,
      limit: isKept ? 0 : null,
      unit: 'count',
      where: isKept ? [] : [{ kind: 'port', name: worstCut.port }],
      sentence: isKept
        ? 'A home run that fails darkens no panel: every run is fed from its other end.'
        : `The worst home run to fail, at port ${worstCut.port}, darkens {measured} panels. Runs with a return: {returns} of {runs}.`,
      values: { returns: { value: runsWithReturn, unit: 'count' }, runs: { value: runs, unit: 'count' } },
    },
  ];
}

function placeOf(kind: CulpritKind, name: string): Place {
  const placeKind =
    kind === 'home-run' ? 'port' : kind === 'power-jumper' ? 'jumper' : kind === 'distro-leg' ? 'leg' : kind;
  return { kind: placeKind, name };
}
