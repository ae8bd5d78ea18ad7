import type { LegLoad } from '../calc/power/power-result';
import { numberRanges } from './number-ranges';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Metal that people touch and that is tied to earth. The plan has no figure for it; the row is there to be ticked off. */
const bonding: readonly Cell[] = [
  'Bonding of frames, truss and racks',
  'PE',
  null,
  null,
  'an electrician decides',
  null,
];

/** Circuits and legs of each service point, where there is more than one. */
function pointLines({ points, distros }: StageParts['power']) {
  if (points.length < 2) return [];
  return points.flatMap((point) => {
    const on = new Set(point.distros);
    const circuits = distros.reduce((sum, distro) => sum + (on.has(distro.number) ? distro.circuits : 0), 0);
    const what = on.size === 0 ? 'no distro' : `distro ${numberRanges(point.distros)}`;
    return point.legs.map((load) => ({ where: `${point.name}, ${what}`, circuits, load }));
  });
}

/** Currents on the legs and the neutral: of the service first, then of its points and of each distro; below them the bonding. */
export function scheduleLegs({ power }: Pick<StageParts, 'power'>): Schedule {
  const lines: { where: string; circuits: number; load: LegLoad }[] = [
    ...power.legs.map((load) => ({ where: 'Service', circuits: power.circuits.length, load })),
    ...pointLines(power),
    ...power.distros.flatMap((distro) =>
      distro.legs.map((load) => ({ where: `Distro ${distro.number}`, circuits: distro.circuits, load })),
    ),
  ];
  return {
    id: 'legs',
    title: 'Legs and bonding',
    columns: [
      words('where', 'Where'),
      words('leg', 'Leg'),
      figures('circuits', 'Circuits in all', 'count'),
      figures('current', 'Full white', 'A'),
      figures('limit', 'Limit', 'A'),
      figures('share', 'Used', 'share'),
    ],
    count: lines.length + 1,
    row: (index): readonly Cell[] => {
      const line = lines[index];
      if (line === undefined) return bonding;
      const { where, circuits, load } = line;
      const share = load.limitA === null || load.limitA === 0 ? null : load.currentA / load.limitA;
      return [where, load.leg, circuits, load.currentA, load.limitA ?? 'not stated', share];
    },
    panelOf: () => null,
    totals: null,
  };
}
