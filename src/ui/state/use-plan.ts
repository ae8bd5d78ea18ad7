import type { Plan } from '../../plan/plan';
import { selectShownPlan } from './selectors';
import { useBench } from './use-bench';

/** One narrow part of the shown plan: a record or a primitive that it holds. */
export function usePlan<Part>(selector: (plan: Plan) => Part): Part {
  return useBench((state) => selector(selectShownPlan(state)));
}
