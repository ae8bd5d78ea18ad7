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

test('workMasses counts the mass from panels, their sheets and fittings by area', () => {
  // By hand: 20 panels of 8 kg and 0.25 m2 of 4 kg each, 180 kg; two columns of four on the heaviest frame, 72 kg.
  const inputs = massesInputs();
  const [total, frame, pressure] = workMasses(inputs, computeMasses(inputs));
  expect(total).toMatchObject({ value: 180, numbers: { n1: 20, m1: 8, w1: 0.5, h1: 0.5, fittings: 4 } });
  expect(frame).toMatchObject({ figure: 'floor pressure, A', value: 72, numbers: { n1: 8 } });
  expect(pressure).toMatchObject({ unit: 'kPa', numbers: { frame: 72 } });
});

test('workMasses of a panel that the catalogue does not have counts its fittings alone', () => {
  const inputs = massesInputs({ panels: [] });
  const [total] = workMasses(inputs, computeMasses(inputs));
  expect(total).toMatchObject({ value: 20, numbers: { m1: 0 } });
  expect(evaluate(total!.expression, { ...total!.numbers })).toBeCloseTo(20, 9);
});

test('workMasses works the floor pressure of what stands only', () => {
  const inputs = massesInputs({ walls: [] });
  expect(workMasses(inputs, computeMasses(inputs))).toHaveLength(1);
});
