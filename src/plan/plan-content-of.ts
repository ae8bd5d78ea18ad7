import type { Plan } from './plan';
import { type PlanContent, planContent } from './plan-content';

const keys = Object.keys(planContent.shape) as (keyof PlanContent)[];

/** What is planned, without what stands beside it in the file: id, revisions, build log. Groups are shared, not copied. */
export function planContentOf(plan: Plan): PlanContent {
  return Object.fromEntries(keys.map((key) => [key, plan[key]])) as unknown as PlanContent;
}
