import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { labelInputs } from '../../../src/sheets/labels/label-inputs';
import { type LabelledCable, labelledKinds } from '../../../src/sheets/labels/labelled-cable';
import { type LabelInputs, listLabelledCables } from '../../../src/sheets/labels/list-labelled-cables';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

/** Wall of 2 columns and 3 rows on one processor: a run of the two lowest rows, a run of each panel above; a circuit a column. */
export function smallStage(change: Partial<LabelInputs> = {}): LabelInputs {
  const { surfaces, runs, power } = stageFixture({ columns: 2, rows: 3, jointDeg: 0, splitAboveRow: 2 });
  const homeRuns = runs.runs.map(() => ({ home: { leastMm: 1200, stockMm: 2000 }, back: null }));
  return { surfaces, runs, power, cables: [], homeRuns, lengths: 'metric', ...change };
}

export function labelInputsOf(plan: Plan): LabelInputs {
  return labelInputs(plan, createEvaluator().evaluate(plan));
}

export function allLabels(inputs: LabelInputs): readonly LabelledCable[] {
  return listLabelledCables(inputs, new Set(labelledKinds));
}
