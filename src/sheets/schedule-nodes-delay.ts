import type { NodesResults } from '../calc/nodes/node-result';
import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

interface DelayParts {
  readonly surfaces: SurfaceSet;
  readonly delays: NodesResults['delays'];
}

/** Delay from tracked camera to lit panel: a row for each step of each surface, and one for what they come to. */
export function scheduleNodesDelay({ surfaces, delays }: DelayParts): Schedule {
  const rows = delays.flatMap(({ surfaceId, steps, ms, frames }) => {
    const letter = surfaces.surfaces.find((table) => table.surfaceId === surfaceId)?.letter ?? null;
    const each = steps.map((step) => [letter, step.name, step.frames, step.ms / 1000, step.totalMs / 1000]);
    return ms === null ? each : [...each, [letter, 'In all', frames, null, ms / 1000]];
  });
  return {
    id: 'delay',
    title: 'Delay by surface',
    columns: [
      words('surface', 'Surface'),
      words('step', 'Step'),
      figures('frames', 'Frames', 'count'),
      figures('still', 'Besides', 's'),
      figures('total', 'Delay', 's'),
    ],
    count: rows.length,
    row: (index) => rows[index]!,
    panelOf: () => null,
    totals: null,
  };
}
