import { useMemo } from 'react';
import type { SurfaceRuns, WayFigures } from '../../../calc/runs/run-result';
import { wayInWords } from '../../../calc/runs/way-in-words';
import { scheduleRuns } from '../../../sheets/schedule-runs';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { ExistingWiring } from './ExistingWiring';
import { RunsGiven } from './RunsGiven';

/** Ways that the table shows of a surface; the search weighs more. */
const shown = 12;

function wayWords({ way }: WayFigures): string {
  const { words, values } = wayInWords(way);
  return words.replace(/\{(\w+)\}/g, (_token, name: string) => String(values[name]?.value ?? '')).replace(/,$/, '');
}

const wayColumns = (format: Format): readonly FigureColumn<WayFigures>[] => [
  { key: 'way', title: 'Way of wiring', cell: wayWords },
  { key: 'ports', title: 'Ports', cell: ({ ports }) => ports },
  {
    key: 'panels',
    title: 'Panels a port',
    cell: ({ fewest, most }) => (fewest === most ? `${most}` : `${fewest} to ${most}`),
  },
  { key: 'fullest', title: 'Fullest', cell: ({ fullestShare }) => format(fullestShare, 'share') },
  { key: 'figures', title: 'Figures', cell: ({ figures }) => figures },
  { key: 'entry', title: 'Highest entry', cell: ({ highestEntryMm }) => format(highestEntryMm, 'mm') },
  { key: 'cable', title: 'Cable, about', cell: ({ cableMm }) => format(cableMm, 'mm') },
];

/** The way that holds first, then those with the fewest ports. */
function waysInOrder({ ways }: SurfaceRuns): readonly WayFigures[] {
  return [...ways]
    .sort(
      (a, b) => Number(b.chosen) - Number(a.chosen) || a.entriesOutOfReach - b.entriesOutOfReach || a.ports - b.ports,
    )
    .slice(0, shown);
}

/** Which panels hang on which port, in what order, and the other ways it could be done. */
export function RunsPage() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const runs = useEvaluation((evaluation) => evaluation.runs.results);
  const format = useFormat();
  const schedule = useMemo(() => scheduleRuns({ surfaces, zones, runs }), [surfaces, zones, runs]);
  return (
    <ChapterPage
      page="runs"
      given={<RunsGiven />}
      resultNote={`${runs.portsUsed} ports; least possible ${runs.portsLeast}`}
      result={
        runs.runs.length === 0 ? (
          <EmptyState title="Nothing is wired yet." />
        ) : (
          runs.surfaces.map((surface, i) => (
            <FigureTable
              key={surface.surfaceId}
              caption={`${surfaces.surfaces[i]?.letter ?? ''}: ${surface.ports} ports, least possible ${surface.portsLeast}`}
              captioned
              columns={wayColumns(format)}
              rows={waysInOrder(surface)}
              keyOf={(way) => JSON.stringify(way.way)}
              isChosen={({ chosen }) => chosen}
            />
          ))
        )
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
