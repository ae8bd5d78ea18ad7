import { useMemo } from 'react';
import { cautions } from '../../../calc/cautions';
import type { LegLoad } from '../../../calc/power/power-result';
import { scheduleCircuits } from '../../../sheets/schedule-circuits';
import { scheduleLegs } from '../../../sheets/schedule-legs';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { Caution } from '../../widgets/Caution';
import { FigureList } from '../../widgets/FigureList';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { PowerGiven } from './PowerGiven';

const legColumns = (format: Format): readonly FigureColumn<LegLoad>[] => [
  { key: 'leg', title: 'Leg', cell: ({ leg }) => (leg === 'N' ? 'Neutral' : leg) },
  { key: 'current', title: 'Full white', cell: ({ currentA }) => format(currentA, 'A') },
  { key: 'limit', title: 'Of', cell: ({ limitA }) => format(limitA, 'A', 'not stated') },
];

/** Circuits, distros and legs: what each carries, at full white and typically. */
export function PowerPage() {
  const power = useEvaluation((evaluation) => evaluation.power.results);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const format = useFormat();
  const circuits = useMemo(() => scheduleCircuits({ surfaces, power }), [surfaces, power]);
  const legs = useMemo(() => scheduleLegs({ power }), [power]);
  return (
    <ChapterPage
      page="power"
      given={<PowerGiven />}
      resultNote="at full white, with signal equipment"
      result={
        <>
          <FigureList
            figures={[
              { name: 'Full white', value: format(power.maxW, 'W') },
              { name: 'Typical', value: format(power.typicalW, 'W') },
              { name: 'Black', value: format(power.blackW, 'W') },
              { name: 'Circuits', value: format(power.circuits.length, 'count') },
              { name: 'Distros', value: format(power.distros.length, 'count') },
            ]}
          />
          <FigureTable
            caption="Legs of the service"
            columns={legColumns(format)}
            rows={power.legs}
            keyOf={({ leg }) => leg}
          />
        </>
      }
      schedule={
        <>
          <PlanSchedule schedule={circuits} />
          <PlanSchedule schedule={legs} />
        </>
      }
      scheduleNote="circuits by distro, then legs and bonding"
      caution={<Caution>{cautions.electricity}</Caution>}
    />
  );
}
