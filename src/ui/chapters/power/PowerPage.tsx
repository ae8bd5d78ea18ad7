import { useMemo } from 'react';
import { cautions } from '../../../calc/cautions';
import { scheduleCircuits } from '../../../sheets/schedule-circuits';
import { scheduleLegs } from '../../../sheets/schedule-legs';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { Caution } from '../../widgets/Caution';
import { FigureList } from '../../widgets/FigureList';
import { useFormat } from '../../widgets/use-format';
import { PowerGiven } from './PowerGiven';
import { LegsTable, PanelsACircuitTable, PointsTable } from './PowerTables';

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
          <LegsTable legs={power.legs} typicalLegs={power.typicalLegs} />
          <PointsTable points={power.points} />
          <PanelsACircuitTable panelsACircuit={power.panelsACircuit} />
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
