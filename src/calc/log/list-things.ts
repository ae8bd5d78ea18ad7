import type { Circuit } from '../power/power-result';
import type { Run } from '../runs/run-result';
import { columnName } from '../surfaces/column-name';
import type { SurfaceSet } from '../surfaces/surface-table';
import { zoneOfPanels } from '../zones/zone-of-panels';
import type { Zone } from '../zones/zone-result';
import type { BuiltThing, BuiltThings } from './built-thing';

/** What of an evaluation says which columns, ports and circuits there are. */
export interface ThingsInputs {
  readonly surfaces: SurfaceSet;
  readonly zones: readonly Zone[];
  readonly runs: {
    readonly runs: readonly Pick<Run, 'port' | 'returnPort' | 'surfaceId' | 'start' | 'count'>[];
    readonly order: Uint32Array;
  };
  readonly power: {
    readonly circuits: readonly Pick<Circuit, 'name' | 'surfaceId' | 'start' | 'count'>[];
    readonly order: Uint32Array;
  };
}

/** Every column with a panel, every port with a run on it, those that runs come back to among them, and every circuit. */
export function listThings({ surfaces, zones, runs, power }: ThingsInputs): BuiltThings {
  const zoneOf = new Int32Array(surfaces.total).fill(-1);
  surfaces.surfaces.forEach((table, s) => {
    zoneOf.set(zoneOfPanels(table, zones), surfaces.offsets[s]);
  });
  const thing = (part: Omit<BuiltThing, 'zones'>): BuiltThing => ({ ...part, zones: zonesOn(zoneOf, part.panels) });

  const column = surfaces.surfaces.flatMap((table, s) =>
    Array.from({ length: table.columns }, (_, c) => {
      const places = table.at.subarray(c * table.rows, (c + 1) * table.rows);
      const panels = Array.from(
        places.filter((local) => local >= 0),
        (local) => surfaces.offsets[s]! + local,
      );
      const name = columnName(surfaces, table, c + 1);
      return thing({ of: 'column', name, surfaceId: table.surfaceId, panels, feeds: true });
    }).filter(({ panels }) => panels.length > 0),
  );
  const ports = runs.runs.flatMap(({ port, returnPort, surfaceId, start, count }) => {
    const panels = Array.from(runs.order.subarray(start, start + count));
    const fed = thing({ of: 'port', name: port, surfaceId, panels, feeds: true });
    return returnPort === null ? [fed] : [fed, { ...fed, name: returnPort, feeds: false }];
  });
  const circuit = power.circuits.map(({ name, surfaceId, start, count }) => {
    const panels = Array.from(power.order.subarray(start, start + count));
    return thing({ of: 'circuit', name, surfaceId, panels, feeds: true });
  });
  return { column, port: ports.toSorted(byPort), circuit };
}

function zonesOn(zoneOf: Int32Array, panels: readonly number[]): readonly number[] {
  const found = new Set<number>();
  for (const panel of panels) if (zoneOf[panel]! >= 0) found.add(zoneOf[panel]!);
  return [...found].sort((one, other) => one - other);
}

/** By processor, breakout and number: '3-04', '3A-10', '3B-01', '12A-01'. */
function byPort({ name: one }: BuiltThing, { name: other }: BuiltThing): number {
  const [a, b] = [Number.parseInt(one, 10), Number.parseInt(other, 10)];
  return a - b || (one < other ? -1 : one > other ? 1 : 0);
}
