import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import { outputsOf } from '../sheets/outputs-of';
import type { NamedFile } from './files-to-zip';
import { makeOutputs, type OutputsAsked, type OutputsStep } from './make-outputs';
import { planWorkbook } from './plan-workbook';

/** One thing to be made of a plan: an output of its stage, or all of its schedules. */
export type PlanFileAsked = OutputsAsked | { readonly make: 'schedules' };

/** Makes it step by step; ends with the file, or with null where pictures for the screen were asked. */
export function* makePlanFile(
  asked: PlanFileAsked,
  plan: Plan,
  evaluation: Evaluation,
): Generator<OutputsStep, NamedFile | Promise<NamedFile> | null> {
  if (asked.make === 'schedules') return planWorkbook(plan, evaluation);
  return yield* makeOutputs(asked, outputsOf(evaluation), plan.name);
}
