import type { SurfaceTable as Surface } from '../../../calc/surfaces/surface-table';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';

const columns: readonly FigureColumn<Surface>[] = [
  { key: 'surface', title: 'Surface', cell: ({ letter, name }) => `${letter} ${name}` },
  { key: 'panels', title: 'Panels', cell: ({ count }) => count },
  { key: 'lattice', title: 'Columns × rows', cell: ({ columns: across, rows }) => `${across} × ${rows}` },
  { key: 'canvas', title: 'Canvas, px', cell: ({ canvasWidth, canvasHeight }) => `${canvasWidth} × ${canvasHeight}` },
];

/** The surfaces of the stage; a press shows one in the drawing. */
export function SurfaceTable() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  const { setDrawing } = useActions();
  if (surfaces.length === 0) return null;
  return (
    <FigureTable
      caption="Surfaces"
      columns={columns}
      rows={surfaces}
      keyOf={(surface) => surface.surfaceId}
      onPick={({ surfaceId }) => setDrawing({ view: 'unrolled', surfaceId })}
    />
  );
}
