import { expect, test } from 'vitest';
import { picturesSteps } from '../../../../src/calc/levers/steps/pictures-steps';
import { samplePlan } from '../../../arbitraries/sample-plans';

test('picturesSteps of three interleaved pictures are two and one, of one none', () => {
  const plan = samplePlan('flat');
  const of = (pictures: number) =>
    picturesSteps({
      ...plan,
      picture: { ...plan.picture, base: { ...plan.picture.base, pictures }, bySurface: [], alsoServe: [] },
    });
  expect(of(3).map(({ to }) => to.value)).toEqual([2, 1]);
  expect(of(1)).toEqual([]);
});
