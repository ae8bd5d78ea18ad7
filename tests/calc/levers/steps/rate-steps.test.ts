import { expect, test } from 'vitest';
import { allModes, mapModes, rateSteps } from '../../../../src/calc/levers/steps/rate-steps';
import { samplePlan } from '../../../arbitraries/sample-plans';

const plan = samplePlan('horseshoe');

test('rateSteps come down from the fastest rate, one usual rate at a time', () => {
  const to = rateSteps(plan).map((step) => step.to.value);
  expect(to).toEqual([...to].sort((a, b) => b - a));
  expect(Math.max(...to)).toBeLessThan(
    Math.max(...allModes(plan.picture).map(({ rate }) => rate.frames / rate.seconds)),
  );
});

test('mapModes changes every mode of a picture and no surface', () => {
  const changed = mapModes(plan.picture, (mode) => ({ ...mode, depthBits: 8 }));
  expect(allModes(changed).every(({ depthBits }) => depthBits === 8)).toBe(true);
  expect(changed.bySurface.map(({ surfaceId }) => surfaceId)).toEqual(
    plan.picture.bySurface.map(({ surfaceId }) => surfaceId),
  );
});
