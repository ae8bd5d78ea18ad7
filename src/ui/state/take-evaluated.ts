import type { BenchState } from './bench-state';
import type { Evaluated } from './evaluation-host';
import { findSelection } from './find-selection';
import { keepDark } from './keep-dark';
import { pickSought } from './pick-sought';
import type { Selection } from './selection';

/** What an answer of the evaluation changes in the state; a selection that no longer exists is dropped, a name that was sought is picked. */
export function takeEvaluated(
  state: Pick<BenchState, 'selection' | 'sought' | 'drawing' | 'faults' | 'evaluation'>,
  evaluated: Evaluated,
): Pick<BenchState, 'recomputing' | 'failure'> & Partial<BenchState> {
  if ('failure' in evaluated) return { failure: evaluated.failure, recomputing: false };
  const { evaluation } = evaluated;
  const { faults, sought } = state;
  const dark = keepDark(faults.dark, state.evaluation?.surfaces, evaluation.surfaces);
  return {
    evaluation,
    recomputing: false,
    failure: null,
    selection: keepSelection(state.selection, evaluated),
    faults: dark === faults.dark ? faults : { ...faults, dark },
    ...(sought === null ? {} : pickSought(state, sought, evaluation)),
  };
}

function keepSelection(selection: Selection | null, evaluated: Evaluated): Selection | null {
  if (!selection || 'failure' in evaluated) return selection;
  const again = findSelection(evaluated.evaluation, selection.name);
  if (again?.kind !== selection.kind) return null;
  const unmoved = JSON.stringify(again) === JSON.stringify(selection);
  return unmoved ? selection : again;
}
