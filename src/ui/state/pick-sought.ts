import type { Evaluation } from '../../calc/evaluation';
import type { BenchState } from './bench-state';
import { findSelection } from './find-selection';
import { surfaceOfSelection } from './surface-of-selection';

/** What picking a name changes in the state: the selection, and the surface that the drawing shows. Nothing where nothing has that name. */
export function pickSought(
  { drawing }: Pick<BenchState, 'drawing'>,
  name: string,
  evaluation: Evaluation,
): Pick<BenchState, 'sought'> & Partial<BenchState> {
  const selection = findSelection(evaluation, name);
  if (!selection) return { sought: null };
  const surfaceId = surfaceOfSelection(evaluation, selection) ?? drawing.surfaceId;
  return { sought: null, selection, drawing: surfaceId === drawing.surfaceId ? drawing : { ...drawing, surfaceId } };
}
