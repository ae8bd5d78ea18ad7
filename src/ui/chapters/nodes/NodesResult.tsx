import type { SurfaceDelay } from '../../../calc/nodes/node-result';
import { useEvaluation } from '../../state/use-evaluation';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { CanvasDiagram } from './CanvasDiagram';

/** Nodes with their canvases, a sketch of each kind of canvas, and the delay of every surface. */
export function NodesResult() {
  const { nodes, surfaces, delays } = useEvaluation((evaluation) => evaluation.nodes.results);
  const tables = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  const format = useFormat();
  const letterOf = (surfaceId: string) => tables.find((table) => table.surfaceId === surfaceId)?.letter ?? '';
  const inSeconds = (ms: number | null) => (ms === null ? null : ms / 1000);
  return (
    <>
      <FigureTable
        caption="Nodes and their canvases"
        captioned
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
        rows={nodes}
        keyOf={({ name }) => name}
      />
      <div className="canvases">
        {surfaces.map(({ surfaceId }) => {
          const first = nodes.find((node) => node.surfaceId === surfaceId);
          return first && <CanvasDiagram key={surfaceId} node={first} />;
        })}
      </div>
      {delays.length > 0 && (
        <FigureTable
          caption="From tracked camera to lit panel"
          captioned
          columns={[
            { key: 'surface', title: 'Surface', cell: ({ surfaceId }: SurfaceDelay) => letterOf(surfaceId) },
            { key: 'delay', title: 'Delay', cell: ({ ms }) => format(inSeconds(ms), 's', 'not stated') },
            { key: 'frames', title: 'Frames', cell: ({ frames }) => format(frames, 'count', 'not stated') },
          ]}
          rows={delays}
          keyOf={({ surfaceId }) => surfaceId}
        />
      )}
    </>
  );
}
