import type { Plan } from './plan';
import type { PlanContent } from './plan-content';

/** The plan with another content: its id, revisions and build log stay. */
export function planOfContent(plan: Plan, content: PlanContent): Plan {
  return { ...plan, ...content };
}
