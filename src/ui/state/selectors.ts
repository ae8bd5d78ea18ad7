import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import type { BenchState } from './bench-state';

/** The plan as it is shown: the previewed one while there is a preview. */
export function selectShownPlan(state: BenchState): Plan {
  return state.preview?.plan ?? state.plan;
}

/** What follows from the shown plan; null only before the first evaluation of a large document. */
export function selectShownEvaluation(state: BenchState): Evaluation | null {
  return state.preview?.evaluation ?? state.evaluation;
}

/** True while the figures on the screen belong to an earlier plan. */
export function selectRecomputing(state: BenchState): boolean {
  return state.recomputing || (state.preview !== null && state.preview.evaluation === null);
}

export function selectUndoLabel(state: BenchState): string | null {
  return state.history.past.at(-1)?.label ?? null;
}

export function selectRedoLabel(state: BenchState): string | null {
  return state.history.future[0]?.label ?? null;
}
