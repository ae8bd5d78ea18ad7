import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitMeasures } from '../../src/units/measures';
import { stepQuantity } from '../../src/units/step-quantity';
import type { Unit } from '../../src/units/unit';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const feet = { lengths: 'feet', locale: 'en-US', currency: 'USD' } as const;
const up = { up: true, page: false };
const down = { up: false, page: false };

test('stepQuantity goes to the next multiple of its step', () => {
  expect(stepQuantity(7320, 'mm', up, metric)).toBe(7400);
  expect(stepQuantity(7320, 'mm', down, metric)).toBe(7300);
  expect(stepQuantity(7400, 'mm', up, metric)).toBe(7500);
  expect(stepQuantity(7400, 'mm', { up: true, page: true }, metric)).toBe(8000);
  expect(stepQuantity(500, 'mm', up, metric, 'mm')).toBe(501);
  expect(stepQuantity(0.1, 'share', up, metric)).toBe(0.11);
  expect(stepQuantity(10, 'bit', up, metric)).toBe(12);
});

test('stepQuantity moves feet by an inch and by a foot', () => {
  expect(stepQuantity(7315.2, 'mm', up, feet)).toBe(7340.6);
  expect(stepQuantity(7315.2, 'mm', { up: false, page: true }, feet)).toBe(7010.4);
});

test('stepQuantity moves every figure the way it should, and back again onto the same multiple', () => {
  const units = Object.keys(unitMeasures) as Unit[];
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.constantFrom(...units),
      fc.boolean(),
      (any, unit, page) => {
        const higher = stepQuantity(any, unit, { up: true, page }, metric);
        expect(higher).toBeGreaterThan(any);
        expect(stepQuantity(any, unit, { up: false, page }, metric)).toBeLessThan(any);
        const twice = stepQuantity(higher, unit, { up: true, page }, metric);
        expect(stepQuantity(twice, unit, { up: false, page }, metric)).toBe(higher);
      },
    ),
  );
});
