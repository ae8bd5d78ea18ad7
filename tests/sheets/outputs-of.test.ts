import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { emptyPlan } from '../../src/plan/empty-plan';
import { outputsOf } from '../../src/sheets/outputs-of';

test('outputsOf takes the very results of the evaluation, so that what did not change is known again', () => {
  const evaluation = createEvaluator().evaluate(emptyPlan({ id: 'plan', name: 'Plan', lengths: 'metric' }));
  const { surfaces, zones, runs, fed } = outputsOf(evaluation);
  expect([surfaces, zones, runs, fed]).toEqual([
    evaluation.surfaces,
    evaluation.zones.results.zones,
    evaluation.runs.results,
    evaluation.nodes.results,
  ]);
  expect(runs).toBe(evaluation.runs.results);
});
