import { expect, test } from 'vitest';
import { measures, unitMeasures } from '../../src/units/measures';
import { plainUnit } from '../../src/units/plain-unit';
import type { Unit } from '../../src/units/unit';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const feet = { lengths: 'feet', locale: 'en-US', currency: 'USD' } as const;

test('plainUnit follows the shown system, and the field before that', () => {
  expect(plainUnit('mm', metric)).toBe('m');
  expect(plainUnit('mm', feet)).toBe('ft');
  expect(plainUnit('mm', feet, 'mm')).toBe('mm');
});

test('plainUnit is a spelling that its dimension knows, or none for money and counts', () => {
  for (const unit of Object.keys(unitMeasures) as Unit[]) {
    for (const options of [metric, feet]) {
      const spelling = plainUnit(unit, options);
      const known = measures[unitMeasures[unit].dimension].sizes;
      expect(spelling === '' ? ['money', 'count'].includes(unit) : known[spelling] !== undefined, unit).toBe(true);
    }
  }
});
