import type { Source, Step } from '../chapter';
import type { FaultsResults } from './fault-result';

const cutRule: Source = {
  kind: 'practice',
  text: 'a cut darkens what follows it on its run unless a return feeds it from the other end; a panel without power passes no data unless its sheet says so',
};

/** The worst failure as a share of the stage, of each surface, and how many runs have a second way in. */
export function workFaults(
  { surfaces }: { readonly surfaces: { readonly total: number } },
  results: FaultsResults,
): Step[] {
  const [worst] = results.worst;
  const share = (figure: string, lost: number, panels: number): Step => ({
    figure,
    symbol: 'dark',
    expression: 'lost / panels',
    numbers: { lost, panels },
    value: lost / panels,
    unit: 'share',
    source: cutRule,
  });
  return [
    ...(worst === undefined ? [] : [share('worst single failure of the stage', worst.panels, surfaces.total)]),
    ...results.surfaces.map(({ letter, panels, panelsOfSurface }) =>
      share(`worst failure of equipment on ${letter}`, panels, panelsOfSurface),
    ),
    ...(results.runs === 0
      ? []
      : [
          {
            figure: 'runs with a return',
            symbol: 'returned',
            expression: 'returns / runs',
            numbers: { returns: results.runsWithReturn, runs: results.runs },
            value: results.runsWithReturn / results.runs,
            unit: 'share' as const,
            source: { kind: 'practice' as const, text: 'a run with a return is fed from both of its ends' },
          },
        ]),
  ];
}
