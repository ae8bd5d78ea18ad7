import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { computeMasses } from '../../../src/calc/masses/compute-masses';
import { workMasses } from '../../../src/calc/masses/work-masses';
import { massesInputs } from '../../arbitraries/masses-inputs';
import { surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

test('workMasses prints lines that a maths library evaluates to their value', () => {
  const two = surfaceSet(
    surfaceOf({ columns: 3, rows: 4 }),
    surfaceOf({ columns: 2, rows: 2, surfaceId: 'c', letter: 'B' }),
  );
  for (const inputs of [massesInputs(), massesInputs({ surfaces: two }), massesInputs({ surfaces: surfaceSet() })]) {
    const steps = workMasses(inputs, computeMasses(inputs));
    expect(steps[0]!.value).toBe(computeMasses(inputs).totalKg);
    for (const step of steps) {
      const value: unknown = evaluate(step.expression, { ...step.numbers });
      expect(Math.abs((value as number) - step.value), step.symbol).toBeLessThanOrEqual(1e-9 * Math.abs(step.value));
    }
  }
});

test('workMasses works the floor pressure of what stands only', () => {
  const inputs = massesInputs({ walls: [] });
  expect(workMasses(inputs, computeMasses(inputs))).toHaveLength(1);
});
