import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { makePlanFile, type PlanFileAsked } from '../../src/files/make-plan-file';
import { mapFile, stageFile } from '../../src/files/output-set';
import { planWorkbook } from '../../src/files/plan-workbook';
import { outputsOf } from '../../src/sheets/outputs-of';
import { stageParts } from '../../src/sheets/stage-parts';
import { samplePlan } from '../arbitraries/sample-plans';

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
