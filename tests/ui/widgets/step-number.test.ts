import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepNumber } from '../../../src/ui/widgets/step-number';

const free = { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };

test.each([
  [2100, 1, false, 100, 2200],
  [2100, -1, false, 100, 2000],
  [2130, 1, false, 100, 2200],
  [2130, -1, false, 100, 2100],
  [2100, 1, true, 100, 3100],
  [0.1, 1, false, 0.1, 0.2],
  [0.2, 1, false, 0.1, 0.3],
  [7315.2, 1, false, 25.4, 7340.6],
  [-2.5, 1, false, 2.5, 0],
] as const)('stepNumber from %s by %s (tenfold %s) of step %s is %s', (value, direction, tenfold, step, next) => {
  expect(stepNumber(value, direction, tenfold, { step, ...free })).toBe(next);
});

test('stepNumber stays within its range', () => {
  expect(stepNumber(95, 1, true, { step: 1, least: 0, most: 100 })).toBe(100);
  expect(stepNumber(3, -1, true, { step: 1, least: 0, most: 100 })).toBe(0);
});

test('a step up and a step down from a multiple lead back to it', () => {
  const steps = fc.constantFrom(0.01, 0.1, 0.5, 1, 10, 25.4, 100);
  fc.assert(
    fc.property(steps, fc.integer({ min: -2000, max: 2000 }), (step, times) => {
      const start = Number((step * times).toPrecision(12));
      const up = stepNumber(start, 1, false, { step, ...free });
      expect(stepNumber(up, -1, false, { step, ...free })).toBeCloseTo(start, 9);
    }),
  );
});
