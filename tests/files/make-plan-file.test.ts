import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { labelsPdf } from '../../src/files/labels-pdf';
import { makePlanFile, type PlanFileAsked } from '../../src/files/make-plan-file';
import { mapFile, stageFile } from '../../src/files/output-set';
import { planWorkbook } from '../../src/files/plan-workbook';
import type { LabelGrid } from '../../src/sheets/labels/label-grid';
import { labelInputs } from '../../src/sheets/labels/label-inputs';
import { listLabelledCables } from '../../src/sheets/labels/list-labelled-cables';
import { startingGrids } from '../../src/sheets/labels/starting-grids';
import { outputsOf } from '../../src/sheets/outputs-of';
import { stageParts } from '../../src/sheets/stage-parts';
import { samplePlan } from '../arbitraries/sample-plans';
import { printFonts } from '../sheets/pages/print-fonts';

const plan = samplePlan('flat');
const evaluation = createEvaluator().evaluate(plan);

async function made(asked: PlanFileAsked) {
  const making = makePlanFile(asked, plan, evaluation);
  for (let step = making.next(); ; step = making.next()) if (step.done) return await step.value;
}

test('makePlanFile makes the workbook and the outputs as the command line does', async () => {
  expect(await made({ make: 'schedules' })).toEqual(await planWorkbook(plan, evaluation));
  const stage = stageFile(stageParts(plan, evaluation), plan.name, true);
  expect(await made({ make: 'stage', withVehicle: true })).toEqual(stage);
  expect(await made({ make: 'map' })).toEqual(mapFile(outputsOf(evaluation)));
});

test('makePlanFile makes labels of the kinds that are asked for', async () => {
  const [grid] = startingGrids as [LabelGrid];
  const options = { address: null, planId: plan.id, used: 0, hasLines: true };
  const cables = listLabelledCables(labelInputs(plan, evaluation), new Set(['circuit']));
  expect(await made({ make: 'labels', kinds: ['circuit'], grid, options, fonts: printFonts })).toEqual(
    await labelsPdf(plan.name, cables, grid, options, printFonts),
  );
});
