import { expect, test } from 'vitest';
import { depthSteps } from '../../../../src/calc/levers/steps/depth-steps';
import { samplePlan } from '../../../arbitraries/sample-plans';

test('depthSteps of a plan at 12 bit are 10 and 8', () => {
  const plan = samplePlan('flat');
  const deep = { ...plan, picture: { ...plan.picture, base: { ...plan.picture.base, depthBits: 12 as const } } };
  expect(depthSteps(deep).map(({ to }) => to.value)).toEqual([10, 8]);
});
