import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import { coverPart } from './cover-part';
import type { CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';

/** Everything that a crew needs on paper, in the order in which it stands in the set. */
export function crewSet(plan: Plan, evaluation: Evaluation, options: CrewSetOptions): readonly CrewPart[] {
  return [coverPart(plan, evaluation, options)];
}
