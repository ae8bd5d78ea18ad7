import type { Plan } from '../plan/plan';
import type { DisplayOptions } from '../units/display-options';

/** How the terminal writes a plan's figures: in the plan's lengths and currency, in one locale on every machine. */
export function displayOptionsOf(plan: Pick<Plan, 'lengths' | 'currency'>): DisplayOptions {
  return { lengths: plan.lengths, currency: plan.currency, locale: 'en-GB' };
}
