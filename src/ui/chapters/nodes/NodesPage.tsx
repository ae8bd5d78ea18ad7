import { useMemo } from 'react';
import { scheduleNodes } from '../../../sheets/schedule-nodes';
import { counted } from '../../../units/counted';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { EmptyState } from '../../widgets/EmptyState';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { NodesGiven } from './NodesGiven';

/** Which node feeds which processors, and the canvas that it sends. */
export function NodesPage() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const results = useEvaluation((evaluation) => evaluation.nodes.results);
  const format = useFormat();
  const crops = useMemo(
    () => scheduleNodes({ surfaces, zones, nodes: results.nodes }),
    [surfaces, zones, results.nodes],
  );
  return (
    <ChapterPage
      page="nodes"
      given={<NodesGiven />}
      resultNote={`${counted(results.nodes.length, 'node')}, ${results.spareNodes} spare`}
      result={
        results.nodes.length === 0 ? (
          <EmptyState title="There is no zone yet, and so no node." />
        ) : (
          <FigureTable
            caption="Nodes and their canvases"
            columns={[
              { key: 'name', title: 'Node', cell: ({ name }) => name },
              { key: 'letter', title: 'Surface', cell: ({ letter }) => letter },
              {
                key: 'canvas',
                title: 'Canvas, px',
                cell: ({ canvasWidth, canvasHeight }) => `${canvasWidth} × ${canvasHeight}`,
              },
              { key: 'outputs', title: 'Processors', cell: ({ outputs }) => outputs },
              { key: 'lit', title: 'Lit', cell: ({ litPixels }) => format(litPixels, 'px') },
              { key: 'blank', title: 'Blank', cell: ({ blankPixels }) => format(blankPixels, 'px') },
            ]}
            rows={results.nodes}
            keyOf={({ name }) => name}
          />
        )
      }
      schedule={results.nodes.length > 0 && <PlanSchedule schedule={crops} />}
      scheduleNote="crop by crop"
    />
  );
}
