import type { Plan } from './plan';
import { planContentOf } from './plan-content-of';
import { sameValue } from './same-value';

/** Ids of the revisions in which everything was planned as it is now. */
export function asIssued(plan: Plan): ReadonlySet<string> {
  const now = planContentOf(plan);
  return new Set(plan.revisions.filter(({ content }) => sameValue(content, now)).map(({ id }) => id));
}
