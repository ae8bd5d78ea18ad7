import type { Plan } from '../../plan/plan';
import { planOfContent } from '../../plan/plan-of-content';
import type { Evaluation } from '../evaluation';
import type { Change } from './change';
import { comparePlans } from './compare-plans';
import { followedPlan } from './followed-plan';
import { panelsChanged } from './panels-changed';

/** What became of a plan since a revision of it. */
export interface IssueChanges {
  readonly revision: Plan['revisions'][number];
  readonly changes: readonly Change[];
  /** By panel number of the plan as it is now, 1 where it is built or wired otherwise. */
  readonly panels: Uint8Array;
}

/**
 * What changed since the plan was last given to the crew; where that is just how it stands now, since it was given the time
 * before. null where no revision was issued. `evaluation` is that of the plan, `evaluate` does the same for its earlier states.
 */
export function changesSinceIssue(
  plan: Plan,
  evaluation: Evaluation,
  evaluate: (plan: Plan) => Evaluation,
): IssueChanges | null {
  const now = followedPlan(plan, evaluation);
  let last: IssueChanges | null = null;
  for (const revision of plan.revisions.slice(-2).reverse()) {
    const state = planOfContent(plan, revision.content);
    const before = followedPlan(state, evaluate(state));
    const changes = comparePlans(before, now);
    if (changes.length > 0) return { revision, changes, panels: panelsChanged(before, now) };
    last ??= { revision, changes, panels: new Uint8Array(evaluation.surfaces.total) };
  }
  return last;
}
