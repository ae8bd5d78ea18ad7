import { panelAt } from '../calc/surfaces/panel-at';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Every panel with its way: processor, port, place on the run, circuit, leg. */
export function schedulePanels(parts: Pick<StageParts, 'surfaces' | 'zones' | 'runs' | 'power'>): Schedule {
  const { surfaces, zones, runs, power } = parts;
  return {
    id: 'panels',
    title: 'Panels',
    columns: [
      words('panel', 'Panel'),
      words('type', 'Type'),
      figures('processor', 'Processor', 'count'),
      words('port', 'Port'),
      figures('place', 'Place on run', 'count'),
      words('circuit', 'Circuit'),
      words('leg', 'Leg'),
      figures('canvasX', 'Canvas x', 'px'),
      figures('canvasY', 'Canvas y', 'px'),
    ],
    count: surfaces.total,
    row: (index): readonly Cell[] => {
      const panel = panelAt(surfaces, index)!;
      const run = runs.runs[runs.runOf[index]!];
      const circuit = power.circuits[power.circuitOf[index]!];
      const local = panel.surface.at[(panel.column - 1) * panel.surface.rows + panel.row - 1]!;
      return [
        panel.name,
        panel.type.name,
        run === undefined ? null : (zones[run.zone]?.processor ?? null),
        run?.port ?? null,
        run === undefined ? null : runs.placeOf[index]!,
        circuit?.name ?? null,
        circuit?.leg ?? null,
        panel.surface.canvasX[local]!,
        panel.surface.canvasY[local]!,
      ];
    },
    panelOf: (index) => index,
    totals: null,
  };
}
