import { expect, test } from 'vitest';
import { followedPlan } from '../../../src/calc/compare/followed-plan';
import { createEvaluator } from '../../../src/calc/evaluate';
import { samplePlan } from '../../arbitraries/sample-plans';

test('followedPlan knows a place for every panel', () => {
  const plan = samplePlan('flat');
  const evaluation = createEvaluator().evaluate(plan);
  const followed = followedPlan(plan, evaluation);
  expect(followed.surfaces).toBe(evaluation.surfaces);
  expect(new Set(followed.anchors).size).toBe(64);
});
