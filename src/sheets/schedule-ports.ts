import { homeRunLengths } from '../calc/runs/home-run-lengths';
import type { Cell, Schedule } from './schedule';
import { figures } from './schedule-column';
import { scheduleRuns } from './schedule-runs';
import type { StageParts } from './stage-parts';
import { takeColumns } from './take-columns';

type PortParts = Pick<StageParts, 'surfaces' | 'zones' | 'runs' | 'ceilingEntry' | 'lengths'>;

/** Port schedule as a crew pulls cables by it: a row for each run, with the length class of its home run and, where it returns, of the cable back. */
export function schedulePorts(parts: PortParts): Schedule {
  const runs = takeColumns(scheduleRuns(parts), [
    ...['port', 'panels', 'entry', 'last', 'share', 'entryHeight', 'reach', 'returns'],
  ]);
  const lengths = homeRunLengths(parts.surfaces, parts.zones, parts.runs, parts);
  const reach = runs.columns.findIndex(({ key }) => key === 'reach');
  const hangs = new Set(
    parts.surfaces.surfaces.flatMap(({ kind, surfaceId }) => (kind === 'ceiling' ? [surfaceId] : [])),
  );
  const hasReturns = runs.columns.some(({ key }) => key === 'returns');
  const stockOf = (length: { readonly stockMm: number | null }): Cell => length.stockMm ?? 'to measure';
  return {
    ...runs,
    id: 'ports',
    title: 'Port schedule',
    columns: [
      ...runs.columns,
      figures('homeRun', 'Home run', 'mm'),
      ...(hasReturns ? [figures('returnCable', 'Return cable', 'mm')] : []),
    ],
    row: (index) => {
      const { home, back } = lengths[index]!;
      const returns = parts.runs.runs[index]!.returnPort !== null;
      const backCell = returns ? (back === null ? 'to measure' : stockOf(back)) : null;
      // Nobody reaches for a ceiling.
      const row = hangs.has(parts.runs.runs[index]!.surfaceId) ? runs.row(index).with(reach, null) : runs.row(index);
      return [...row, stockOf(home), ...(hasReturns ? [backCell] : [])];
    },
    totals: [...runs.totals!, null, ...(hasReturns ? [null] : [])],
  };
}
