import type { Plan } from '../../plan/plan';
import type { Evaluation } from '../evaluation';
import { anchorKeys } from './anchor-keys';
import type { ComparedPlan } from './compare-plans';

/** What follows from a plan, with the places by which another state of the same plan follows its panels. */
export function followedPlan(plan: Pick<Plan, 'walls'>, evaluation: Evaluation): ComparedPlan {
  const ground = { surfaces: evaluation.surfaces, walls: plan.walls, ceilings: evaluation.ceilings.results };
  return { ...evaluation, anchors: anchorKeys(ground) };
}
