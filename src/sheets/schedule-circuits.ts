import { panelAt } from '../calc/surfaces/panel-at';
import { counted } from '../units/counted';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Circuits: a row for each, in the order of distros. */
export function scheduleCircuits({ surfaces, power }: Pick<StageParts, 'surfaces' | 'power'>): Schedule {
  const { circuits, order } = power;
  return {
    id: 'circuits',
    title: 'Circuits by distro',
    columns: [
      words('circuit', 'Circuit'),
      figures('distro', 'Distro', 'count'),
      words('leg', 'Leg'),
      figures('panels', 'Panels', 'count'),
      words('entry', 'First panel'),
      words('last', 'Last panel'),
      figures('entryHeight', 'First panel above floor', 'mm'),
      figures('watts', 'Full white', 'W'),
      figures('current', 'Current', 'A'),
      figures('limit', 'May carry', 'A'),
    ],
    count: circuits.length,
    row: (index) => {
      const circuit = circuits[index]!;
      return [
        circuit.name,
        circuit.distro,
        circuit.leg,
        circuit.count,
        panelAt(surfaces, order[circuit.start]!)?.name ?? null,
        panelAt(surfaces, order[circuit.start + circuit.count - 1]!)?.name ?? null,
        circuit.entryHeightMm,
        circuit.watts,
        circuit.currentA,
        circuit.limitA,
      ];
    },
    panelOf: (index) => order[circuits[index]!.start] ?? null,
    totals: [
      counted(circuits.length, 'circuit'),
      null,
      null,
      circuits.reduce((total, circuit) => total + circuit.count, 0),
      null,
      null,
      null,
      circuits.reduce((total, circuit) => total + circuit.watts, 0),
      null,
      null,
    ],
  };
}
