import { panelAt } from '../calc/surfaces/panel-at';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** The wiring panel by panel: a table that is read back as a wiring that exists, to be changed by hand in between. */
export function scheduleWiring({ surfaces, runs }: Pick<StageParts, 'surfaces' | 'runs'>): Schedule {
  return {
    id: 'wiring',
    title: 'Wiring',
    columns: [words('panel', 'Panel'), words('port', 'Port'), figures('place', 'Place', 'count')],
    count: runs.order.length,
    row: (index) => {
      const panel = runs.order[index]!;
      return [
        panelAt(surfaces, panel)?.name ?? null,
        runs.runs[runs.runOf[panel]!]?.port ?? null,
        runs.placeOf[panel]!,
      ];
    },
    panelOf: (index) => runs.order[index] ?? null,
    totals: null,
  };
}
