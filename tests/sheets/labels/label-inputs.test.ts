import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { labelInputs } from '../../../src/sheets/labels/label-inputs';
import { samplePlan } from '../../arbitraries/sample-plans';

test('labelInputs takes the chains and the cables of a plan', () => {
  const plan = samplePlan('flat');
  const evaluation = createEvaluator().evaluate(plan);
  const inputs = labelInputs(plan, evaluation);
  expect(inputs.cables).toBe(plan.catalogue.cables);
  expect(inputs.runs).toBe(evaluation.runs.results);
  expect(inputs.power).toBe(evaluation.power.results);
  expect(inputs.homeRuns).toHaveLength(evaluation.runs.results.runs.length);
});
