import { panelAt } from '../calc/surfaces/panel-at';
import { counted } from '../units/counted';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Port schedule: a row for each run, in the order of ports; where runs return, with the port they return to. */
export function scheduleRuns({ surfaces, zones, runs }: Pick<StageParts, 'surfaces' | 'zones' | 'runs'>): Schedule {
  const hasReturns = runs.runs.some(({ returnPort }) => returnPort !== null);
  const nameOf = (place: number) => panelAt(surfaces, runs.order[place]!)?.name ?? null;
  return {
    id: 'runs',
    title: 'Runs by port',
    columns: [
      words('port', 'Port'),
      words('surface', 'Surface'),
      figures('processor', 'Processor', 'count'),
      figures('panels', 'Panels', 'count'),
      words('entry', 'Entry'),
      words('last', 'Last panel'),
      ...(hasReturns ? [words('returns', 'Returns to')] : []),
      figures('entryHeight', 'Entry above floor', 'mm'),
      words('reach', 'In reach'),
      figures('pixels', 'Pixels', 'px'),
      figures('share', 'Port used', 'share'),
    ],
    count: runs.runs.length,
    row: (index) => {
      const run = runs.runs[index]!;
      const zone = zones[run.zone];
      return [
        run.port,
        zone?.letter ?? null,
        zone?.processor ?? null,
        run.count,
        nameOf(run.start),
        nameOf(run.start + run.count - 1),
        ...(hasReturns ? [run.returnPort] : []),
        run.entryHeightMm,
        run.inReach ? 'yes' : 'no',
        run.pixels,
        run.share,
      ];
    },
    panelOf: (index) => runs.order[runs.runs[index]!.start] ?? null,
    totals: [
      counted(runs.runs.length, 'port'),
      null,
      null,
      sum(runs.runs, (run) => run.count),
      null,
      null,
      ...(hasReturns ? [null] : []),
      null,
      null,
      sum(runs.runs, (run) => run.pixels),
      null,
    ],
  };
}

function sum<T>(items: readonly T[], figure: (item: T) => number): number {
  return items.reduce((total, item) => total + figure(item), 0);
}
