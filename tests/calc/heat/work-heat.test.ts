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

test('workHeat works the typical heat beside that of full white: 23.76 and 54 kW of panels, 7.3 kW of all else', () => {
  // 4 kW of signal equipment, 2 kW of lamps, ten people of 130 W.
  const inputs = heatInputs();
  const steps = workHeat(inputs, computeHeat(inputs));
  expect(steps.find((step) => step.figure === 'typical heat')).toMatchObject({ value: 31_060, unit: 'W' });
  expect(steps.find((step) => step.figure === 'heat at full white')).toMatchObject({ value: 61_300 });
});
