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

test('rateSteps below 240 begin at 120 and its x1000/1001 rate', () => {
  const base = { rate: { frames: 240, seconds: 1 }, depthBits: 8, pictures: 1 } as const;
  const to = rateSteps({ ...plan, picture: { base, bySurface: [], alsoServe: [] } }).map((step) => step.to.value);
  expect(to.slice(0, 3)).toEqual([120, 120_000 / 1001, 100]);
});

test('mapModes changes every mode of a picture and no surface', () => {
  const changed = mapModes(plan.picture, (mode) => ({ ...mode, depthBits: 8 }));
  expect(allModes(changed).every(({ depthBits }) => depthBits === 8)).toBe(true);
  expect(changed.bySurface.map(({ surfaceId }) => surfaceId)).toEqual(
    plan.picture.bySurface.map(({ surfaceId }) => surfaceId),
  );
});
