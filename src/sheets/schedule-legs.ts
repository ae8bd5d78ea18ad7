import type { LegLoad } from '../calc/power/power-result';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Currents on the legs and the neutral: of the service first, then of each distro. */
export function scheduleLegs({ power }: Pick<StageParts, 'power'>): Schedule {
  const lines: { where: string; circuits: number; load: LegLoad }[] = [
    ...power.legs.map((load) => ({ where: 'Service', circuits: power.circuits.length, load })),
    ...power.distros.flatMap((distro) =>
      distro.legs.map((load) => ({ where: `Distro ${distro.number}`, circuits: distro.circuits, load })),
    ),
  ];
  return {
    id: 'legs',
    title: 'Legs',
    columns: [
      words('where', 'Where'),
      words('leg', 'Leg'),
      figures('circuits', 'Circuits in all', 'count'),
      figures('current', 'Full white', 'A'),
      figures('limit', 'Limit', 'A'),
      figures('share', 'Used', 'share'),
    ],
    count: lines.length,
    row: (index): readonly Cell[] => {
      const { where, circuits, load } = lines[index]!;
      const share = load.limitA === null || load.limitA === 0 ? null : load.currentA / load.limitA;
      return [where, load.leg, circuits, load.currentA, load.limitA ?? 'not stated', share];
    },
    panelOf: () => null,
    totals: null,
  };
}
