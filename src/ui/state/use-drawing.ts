import { useMemo } from 'react';
import type { DrawingState } from './bench-state';
import { drawingOfPage } from './drawing-of-page';
import { useBench } from './use-bench';
import { useEvaluation } from './use-evaluation';

/** The drawing as it is shown now. */
export function useDrawing(): DrawingState {
  const drawing = useBench((state) => state.drawing);
  const page = useBench((state) => state.page);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  return useMemo(() => drawingOfPage(drawing, page, surfaces), [drawing, page, surfaces]);
}
