import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { computeHeat } from '../../../src/calc/heat/compute-heat';
import { workHeat } from '../../../src/calc/heat/work-heat';
import { heatInputs, statedHall } from '../../arbitraries/heat-inputs';

test('workHeat prints lines that a maths library evaluates to their value', () => {
  for (const inputs of [heatInputs(), heatInputs({ hall: statedHall })]) {
    for (const step of workHeat(inputs, computeHeat(inputs))) {
      const value: unknown = evaluate(step.expression, { ...step.numbers });
      expect(Math.abs((value as number) - step.value), step.symbol).toBeLessThanOrEqual(1e-9 * Math.abs(step.value));
    }
  }
});

test('workHeat works the warm-up only where there is a hall', () => {
  const figures = (inputs: Parameters<typeof workHeat>[0]) =>
    new Set(workHeat(inputs, computeHeat(inputs)).map((step) => step.figure));
  expect(figures(heatInputs()).has('warm-up without cooling, air only')).toBe(false);
  expect(figures(heatInputs({ hall: statedHall })).has('warm-up without cooling, air only')).toBe(true);
});
