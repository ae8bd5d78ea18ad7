import type { Plan } from '../../plan/plan';
import { planOfContent } from '../../plan/plan-of-content';
import type { Evaluation } from '../evaluation';
import type { Change } from './change';
import { type ComparedPlan, comparePlans } from './compare-plans';
import { followedPlan } from './followed-plan';
import { panelsChanged } from './panels-changed';

/** Two states of one plan: a revision by its id, or the plan as it is now (null). */
export interface RevisionsAsked {
  readonly from: string | null;
  readonly to: string | null;
}

type Evaluate = (plan: Plan) => Evaluation;

/** What the crew reads otherwise in one state of a plan than in another one; null where the plan has no such revision. */
export function compareRevisions(plan: Plan, { from, to }: RevisionsAsked, evaluate: Evaluate): Change[] | null {
  const before = stateOf(plan, from, evaluate);
  const after = stateOf(plan, to, evaluate);
  return before === null || after === null ? null : comparePlans(before, after);
}

/** By panel of the plan as it is now, 1 where it is built or wired otherwise than in a revision (see `panelsChanged`); null without it. */
export function panelsChangedSince(plan: Plan, from: string, evaluate: Evaluate): Uint8Array | null {
  const before = stateOf(plan, from, evaluate);
  return before === null ? null : panelsChanged(before, stateOf(plan, null, evaluate)!);
}

function stateOf(plan: Plan, id: string | null, evaluate: Evaluate): ComparedPlan | null {
  const content = plan.revisions.find((revision) => revision.id === id)?.content;
  if (id !== null && content === undefined) return null;
  const state = content === undefined ? plan : planOfContent(plan, content);
  return followedPlan(state, evaluate(state));
}
