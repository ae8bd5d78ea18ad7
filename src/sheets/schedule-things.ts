import type { BuiltThing } from '../calc/log/built-thing';
import { panelAt } from '../calc/surfaces/panel-at';
import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { TickedKind } from '../plan/build-log';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

const names: Readonly<Record<TickedKind, string>> = { column: 'Column', port: 'Port', circuit: 'Circuit' };

/** What is ticked off of one kind, a row for each: columns from the floor up, ports and circuits along their panels. */
export function scheduleThings(surfaces: SurfaceSet, of: TickedKind, things: readonly BuiltThing[]): Schedule {
  return {
    id: `things-${of}`,
    title: `By ${of}`,
    columns: [
      words('name', names[of]),
      figures('panels', 'Panels', 'count'),
      words('first', 'First'),
      words('last', 'Last'),
    ],
    count: things.length,
    row: (index) => {
      const { name, panels, feeds } = things[index]!;
      const [first, last] = [panels[0], panels.at(-1)].map((panel) => panelAt(surfaces, panel ?? -1)?.name ?? null);
      return feeds ? [name, panels.length, first!, last!] : [name, 'return', last!, first!];
    },
    panelOf: (index) => things[index]!.panels[0] ?? null,
    totals: null,
  };
}
