import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import { outputsOf } from '../sheets/outputs-of';
import { stageParts } from '../sheets/stage-parts';
import type { NamedFile } from './files-to-zip';
import { makeOutputs, type OutputsAsked, type OutputsStep } from './make-outputs';
import { stageFile } from './output-set';
import { planWorkbook } from './plan-workbook';

/** One thing to be made of a plan: an output of its stage, all of its schedules, or the stage itself. */
export type PlanFileAsked =
  | OutputsAsked
  | { readonly make: 'schedules' }
  | { readonly make: 'stage'; readonly withVehicle: boolean };

/** Makes it step by step; ends with the file, or with null where pictures for the screen were asked. */
export function* makePlanFile(
  asked: PlanFileAsked,
  plan: Plan,
  evaluation: Evaluation,
): Generator<OutputsStep, NamedFile | Promise<NamedFile> | null> {
  if (asked.make === 'schedules') return planWorkbook(plan, evaluation);
  if (asked.make === 'stage') return stageFile(stageParts(plan, evaluation), plan.name, asked.withVehicle);
  return yield* makeOutputs(asked, outputsOf(evaluation), plan.name);
}
