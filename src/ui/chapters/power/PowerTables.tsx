import type { LegLoad, PointLoad, PowerResults } from '../../../calc/power/power-result';
import { numberRanges } from '../../../sheets/number-ranges';
import { usePlan } from '../../state/use-plan';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';

const legColumns = (format: Format, typical: readonly LegLoad[]): readonly FigureColumn<LegLoad>[] => [
  { key: 'leg', title: 'Leg', cell: ({ leg }) => (leg === 'N' ? 'Neutral' : leg) },
  { key: 'current', title: 'Full white', cell: ({ currentA }) => format(currentA, 'A') },
  {
    key: 'typical',
    title: 'Typical',
    cell: (row) => format(typical.find(({ leg }) => leg === row.leg)?.currentA ?? null, 'A'),
  },
  { key: 'limit', title: 'Of', cell: ({ limitA }) => format(limitA, 'A', 'not stated') },
];

/** What every leg of the whole service carries. */
export function LegsTable({ legs, typicalLegs }: Pick<PowerResults, 'legs' | 'typicalLegs'>) {
  const format = useFormat();
  return (
    <FigureTable
      caption="Legs of the service"
      columns={legColumns(format, typicalLegs)}
      rows={legs}
      keyOf={({ leg }) => leg}
    />
  );
}

/** The fullest leg of a service point. */
function worstLeg({ legs }: PointLoad): LegLoad | undefined {
  return legs.filter(({ leg }) => leg !== 'N').toSorted((a, b) => b.currentA - a.currentA)[0];
}

const pointColumns = (format: Format): readonly FigureColumn<PointLoad>[] => [
  { key: 'name', title: 'Service point', cell: ({ name }) => name },
  { key: 'distros', title: 'Distros', words: true, cell: ({ distros }) => numberRanges(distros) || 'none' },
  { key: 'current', title: 'Fullest leg', cell: (point) => format(worstLeg(point)?.currentA ?? null, 'A') },
  { key: 'limit', title: 'Of', cell: (point) => format(worstLeg(point)?.limitA ?? null, 'A') },
];

/** Which distros hang on which service point, where there is a choice. */
export function PointsTable({ points }: Pick<PowerResults, 'points'>) {
  const format = useFormat();
  if (points.length < 2) return null;
  return (
    <FigureTable
      caption="Service points"
      columns={pointColumns(format)}
      rows={points}
      keyOf={({ pointId }) => pointId}
    />
  );
}

type OnCircuit = PowerResults['panelsACircuit'][number];

/** How many panels of each type one circuit takes. */
export function PanelsACircuitTable({ panelsACircuit }: Pick<PowerResults, 'panelsACircuit'>) {
  const panels = usePlan((plan) => plan.catalogue.panels);
  const format = useFormat();
  if (panelsACircuit.length === 0) return null;
  const columns: readonly FigureColumn<OnCircuit>[] = [
    { key: 'name', title: 'Panel', cell: ({ panelId }) => panels.find(({ id }) => id === panelId)?.name ?? panelId },
    { key: 'panels', title: 'To a circuit', cell: (row) => format(row.panels, 'count') },
    { key: 'current', title: 'Each draws', cell: ({ currentA }) => format(currentA, 'A') },
  ];
  return (
    <FigureTable caption="Panels a circuit" columns={columns} rows={panelsACircuit} keyOf={({ panelId }) => panelId} />
  );
}
