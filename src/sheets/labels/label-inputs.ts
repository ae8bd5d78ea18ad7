import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import type { LabelInputs } from './list-labelled-cables';

/** What labels read of a plan and its evaluation, and no more. */
export function labelInputs(
  plan: { readonly catalogue: Pick<Plan['catalogue'], 'cables'> },
  { surfaces, runs, power }: Pick<Evaluation, 'surfaces' | 'runs' | 'power'>,
): LabelInputs {
  return { surfaces, runs: runs.results, power: power.results, cables: plan.catalogue.cables };
}
