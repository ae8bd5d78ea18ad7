import { useMemo } from 'react';
import { scheduleRuns } from '../../../sheets/schedule-runs';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { EmptyState } from '../../widgets/EmptyState';
import { ExistingWiring } from './ExistingWiring';
import { HandWiring } from './HandWiring';
import { RestingChanges } from './RestingChanges';
import { RunsGiven } from './RunsGiven';
import { WaysTable } from './WaysTable';

/** Which panels hang on which port, in what order, and the other ways it could be done. */
export function RunsPage() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const runs = useEvaluation((evaluation) => evaluation.runs.results);
  const schedule = useMemo(() => scheduleRuns({ surfaces, zones, runs }), [surfaces, zones, runs]);
  return (
    <ChapterPage
      page="runs"
      given={<RunsGiven />}
      resultNote={`${runs.portsUsed} ports; least possible ${runs.portsLeast}`}
      result={
        <>
          {runs.runs.length === 0 && <EmptyState title="Nothing is wired yet." />}
          {runs.surfaces.map(
            (surface, i) =>
              surface.ways.length > 0 && (
                <WaysTable
                  key={surface.surfaceId}
                  surface={surface}
                  letter={surfaces.surfaces[i]?.letter ?? surface.surfaceId}
                />
              ),
          )}
          {runs.runs.length > 0 && <HandWiring />}
          <RestingChanges />
        </>
      }
      schedule={
        <>
          {runs.runs.length > 0 && <PlanSchedule schedule={schedule} />}
          <ExistingWiring />
        </>
      }
      scheduleNote="port by port"
    />
  );
}
