import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import type { LabelGrid } from '../sheets/labels/label-grid';
import { labelInputs } from '../sheets/labels/label-inputs';
import type { LabelledKind } from '../sheets/labels/labelled-cable';
import type { LabelOptions } from '../sheets/labels/lay-out-labels';
import { listLabelledCables } from '../sheets/labels/list-labelled-cables';
import { outputsOf } from '../sheets/outputs-of';
import { stageParts } from '../sheets/stage-parts';
import type { NamedFile } from './files-to-zip';
import { labelsPdf } from './labels-pdf';
import { makeOutputs, type OutputsAsked, type OutputsStep } from './make-outputs';
import { stageFile } from './output-set';
import type { PrintFonts } from './pages-to-pdf';
import { planWorkbook } from './plan-workbook';

/** One thing to be made of a plan: an output of its stage, all of its schedules, the stage itself, or its labels. */
export type PlanFileAsked =
  | OutputsAsked
  | { readonly make: 'schedules' }
  | { readonly make: 'stage'; readonly withVehicle: boolean }
  | LabelsAsked;

export interface LabelsAsked {
  readonly make: 'labels';
  readonly kinds: readonly LabelledKind[];
  readonly grid: LabelGrid;
  readonly options: LabelOptions;
  readonly fonts: PrintFonts;
}

/** Makes it step by step; ends with the file, or with null where pictures for the screen were asked. */
export function* makePlanFile(
  asked: PlanFileAsked,
  plan: Plan,
  evaluation: Evaluation,
): Generator<OutputsStep, NamedFile | Promise<NamedFile> | null> {
  if (asked.make === 'schedules') return planWorkbook(plan, evaluation);
  if (asked.make === 'stage') return stageFile(stageParts(plan, evaluation), plan.name, asked.withVehicle);
  if (asked.make === 'labels') return makeLabels(asked, plan, evaluation);
  return yield* makeOutputs(asked, outputsOf(evaluation), plan.name);
}

function makeLabels(
  { kinds, grid, options, fonts }: LabelsAsked,
  plan: Plan,
  evaluation: Evaluation,
): Promise<NamedFile> {
  const cables = listLabelledCables(labelInputs(plan, evaluation), new Set(kinds));
  return labelsPdf(plan.name, cables, grid, options, fonts);
}
