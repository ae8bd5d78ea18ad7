import type { Evaluation } from '../../../../src/calc/evaluation';
import type { LogState } from '../../../../src/calc/log/log-state';
import type { Tick } from '../../../../src/plan/build-log';
import { findSelection } from '../../../../src/ui/state/find-selection';
import { logOf } from '../../../../src/ui/state/log-of';
import type { Selection } from '../../../../src/ui/state/selection';
import { fakeEvaluation, somePlan } from '../../state/fake-bench';

/** A wall of 12 columns and 6 rows alone: above row 4 a run for each column, below it runs fold over two; a circuit a column. */
export const wall: Evaluation = fakeEvaluation(somePlan);

export const logWith = (ticks: Tick[] = []): LogState => logOf(wall, { ticks });

export function picked(name: string): Selection {
  const selection = findSelection(wall, name);
  if (!selection) throw new Error(`nothing is called ${name}`);
  return selection;
}
