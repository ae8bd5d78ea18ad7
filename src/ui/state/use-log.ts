import type { LogState } from '../../calc/log/log-state';
import { logOf } from './log-of';
import { useEvaluation } from './use-evaluation';
import { usePlan } from './use-plan';

/** What the log of the plan in view says of every column, port and circuit. */
export function useLog(): LogState {
  const evaluation = useEvaluation((all) => all);
  const log = usePlan((plan) => plan.log);
  return logOf(evaluation, log);
}
