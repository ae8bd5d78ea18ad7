import { useMemo } from 'react';
import { cautions } from '../../../calc/cautions';
import type { WallResult } from '../../../calc/walls/wall-result';
import { draftWall } from '../../../plan/draft-wall';
import { scheduleRings } from '../../../sheets/schedule-rings';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { usePageHref } from '../../bench/use-page-href';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { Caution } from '../../widgets/Caution';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { Alternatives } from './Alternatives';
import { WallGiven } from './WallGiven';

const columns = (format: Format): readonly FigureColumn<WallResult>[] => [
  { key: 'wall', title: 'Wall', cell: ({ letter, name }) => `${letter} ${name}` },
  { key: 'inside', title: 'Inside diameter', cell: ({ insideDiameterMm }) => format(insideDiameterMm, 'mm', 'none') },
  { key: 'opening', title: 'Opening', cell: ({ openingMm }) => format(openingMm, 'mm', 'not a ring') },
  { key: 'height', title: 'Height', cell: ({ heightMm }) => format(heightMm, 'mm') },
  { key: 'worst', title: 'Off the circle', cell: ({ bestFit }) => format(bestFit?.worstMm ?? null, 'mm', 'none') },
  { key: 'area', title: 'Area', cell: ({ areaM2 }) => format(areaM2, 'm2') },
  { key: 'pixels', title: 'Pixels', cell: ({ pixels }) => format(pixels, 'px') },
];

/** The walls: path, bands, holes, and the ring that comes out. */
export function WallsPage() {
  const plan = usePlan((whole) => whole);
  const results = useEvaluation((evaluation) => evaluation.walls.results.walls);
  const { dispatch } = useActions();
  const format = useFormat();
  const href = usePageHref();
  const schedule = useMemo(() => scheduleRings(results), [results]);
  const panelId = plan.walls[0]?.bands[0]?.panelId ?? plan.catalogue.panels[0]?.id;
  return (
    <ChapterPage
      page="walls"
      given={
        <>
          {plan.walls.length === 0 && (
            <EmptyState title="There is no wall yet.">
              Say what you wish for, and <a href={href('wish')}>the wish lists the rings that can be built</a>; or begin
              with a plain wall.
            </EmptyState>
          )}
          {plan.walls.map((wall, index) => (
            <WallGiven key={wall.id} wall={wall} index={index} />
          ))}
          {panelId !== undefined && (
            <Button small onClick={() => dispatch({ name: 'add-wall', args: { wall: draftWall(plan, panelId) } })}>
              Add a wall
            </Button>
          )}
          <Alternatives />
        </>
      }
      result={
        results.length > 0 && (
          <FigureTable caption="Walls" columns={columns(format)} rows={results} keyOf={({ wallId }) => wallId} />
        )
      }
      schedule={schedule.count > 0 && <PlanSchedule schedule={schedule} />}
      caution={
        <Caution>
          {cautions.stackedLoad} {cautions.exits}
        </Caution>
      }
    />
  );
}
