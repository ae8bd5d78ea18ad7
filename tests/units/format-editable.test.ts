import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DisplayOptions } from '../../src/units/display-options';
import { formatEditable } from '../../src/units/format-editable';
import { unitMeasures } from '../../src/units/measures';
import { parseQuantity } from '../../src/units/parse-quantity';
import { settleQuantity } from '../../src/units/settle-quantity';
import type { Unit } from '../../src/units/unit';

const german: DisplayOptions = { lengths: 'metric', locale: 'de-DE', currency: 'EUR' };
const feet: DisplayOptions = { lengths: 'feet', locale: 'en-US', currency: 'USD' };

test('formatEditable writes the whole figure with a point and no groups', () => {
  expect(formatEditable(7315.2, 'mm', german)).toBe('7.3152 m');
  expect(formatEditable(304.8, 'mm', german, 'mm')).toBe('304.8 mm');
  expect(formatEditable(650_000, 'px', german)).toBe('650000 px');
  expect(formatEditable(0.1, 'share', german)).toBe('10 %');
  expect(formatEditable(2.5, 'deg', german)).toBe('2.5°');
  expect(formatEditable(1250, 'money', german)).toBe('1250');
  expect(formatEditable(1200, 'W', german, 'kW')).toBe('1.2 kW');
  expect(formatEditable(0, 'mm', german)).toBe('0 m');
});

test('formatEditable writes feet with fractions where they are exact, else with decimals', () => {
  expect(formatEditable(7315.2, 'mm', feet)).toBe(`24' 0"`);
  expect(formatEditable(7480.3, 'mm', feet)).toBe(`24' 6 1/2"`);
  // 2100 mm = 6 ft 271.2 mm; 271.2 mm / 25.4 = 10.677165 in
  expect(formatEditable(2100, 'mm', feet)).toBe(`6' 10.67717"`);
  expect(formatEditable(-304.8, 'mm', feet)).toBe(`-1' 0"`);
  // 500 - 304.8 = 195.2 mm = 7.685039 in
  expect(formatEditable(500, 'mm', feet)).toBe(`1' 7.68504"`);
  // 7.874 in = 199.9996 mm, the same whole micrometre as 200 mm
  expect(formatEditable(-200, 'mm', feet)).toBe('-7.874"');
});

test.each([
  ['metric', german],
  ['feet', feet],
])('parseQuantity gives back the very figure that formatEditable wrote (%s)', (_name, options) => {
  const units = Object.keys(unitMeasures) as Unit[];
  const plain = fc.constantFrom(undefined, 'mm', 'm', 'in', 'ft');
  fc.assert(
    fc.property(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.constantFrom(...units),
      plain,
      (any, unit, chosen) => {
        const value = settleQuantity(['px', 'bit', 'days', 'count'].includes(unit) ? Math.round(any) : any, unit);
        const shown = unit === 'mm' ? chosen : undefined;
        const text = formatEditable(value, unit, options, shown);
        expect(parseQuantity(text, unit, options, shown), text).toEqual({ value });
      },
    ),
    { numRuns: 1000 },
  );
});
