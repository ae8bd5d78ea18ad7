import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DisplayOptions } from '../../src/units/display-options';
import { formatQuantity } from '../../src/units/format-quantity';
import { unitMeasures } from '../../src/units/measures';
import type { Unit } from '../../src/units/unit';

const metric: DisplayOptions = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' };
const feet: DisplayOptions = { lengths: 'feet', locale: 'en-US', currency: 'USD' };

test.each<[number, Unit, string]>([
  [7315.2, 'mm', '7.32 m'],
  [812.4, 'm2', '812 m²'],
  [9.25, 'm3', '9.25 m³'],
  [2.5, 'deg', '2.5°'],
  [650_000, 'px', '650\u202f000 px'],
  [7_741_440, 'px', '7.74 M px'],
  [8.2, 'kg', '8.2 kg'],
  [4.788, 'kPa', '4.79 kPa'],
  [12.83, 'A', '12.8 A'],
  [0.03, 'A', '30 mA'],
  [0.1, 'A', '0.1 A'],
  [0, 'A', '0 A'],
  [230, 'V', '230 V'],
  [150, 'W', '150 W'],
  [1234, 'W', '1.23 kW'],
  [999.7, 'W', '1 kW'],
  [60.83, 'tons', '60.8 tons'],
  [728_899.6, 'btuh', '728\u202f900 BTU/h'],
  [8.3, 'm3/s', '8.3 m³/s'],
  [12.34, 'min', '12.3 min'],
  [0.0167, 's', '16.7 ms'],
  [20, 's', '20 s'],
  [3840, 'Hz', '3840 Hz'],
  [500_432_000, 'Hz', '500.432 MHz'],
  [24_000 / 1001, 'fps', '23.976 fps'],
  [60_000 / 1001, 'fps', '59.94 fps'],
  [10, 'bit', '10 bit'],
  [1.25e10, 'bps', '12.5 Gbit/s'],
  [850e6, 'bps', '850 Mbit/s'],
  [64_000, 'bps', '64 kbit/s'],
  [500, 'bps', '500 bit/s'],
  [0.864, 'share', '86.4 %'],
  [0.1, 'share', '10 %'],
  [12.5, 'money', '€12.50'],
  [2_410_000, 'money', '€2,410,000'],
  [1, 'days', '1 day'],
  [14, 'days', '14 days'],
  [10, 'K', '10 K'],
  [1836, 'count', '1836'],
])('formatQuantity(%f, %s) is %s', (value, unit, text) => {
  expect(formatQuantity(value, unit, metric)).toBe(text);
});

// 100 m2 / 0.09290304 = 1076.39 ft2; 20 lb = 9.0718474 kg; 1 m3/s = 2118.88 ft3/min (NIST SP 811, appendix B).
test.each<[number, Unit, string]>([
  [7315.2, 'mm', `24' 0"`],
  [100, 'm2', '1076 ft²'],
  [1, 'm3', '35.3 ft³'],
  [9.0718474, 'kg', '9.07 kg (20 lb)'],
  [4.788026, 'kPa', '4.79 kPa (100 psf)'],
  [1, 'm3/s', '2119 ft³/min'],
  [1234.4, 'money', '$1,234'],
])('formatQuantity(%f, %s) in feet is %s', (value, unit, text) => {
  expect(formatQuantity(value, unit, feet)).toBe(text);
});

test('formatQuantity never writes NaN or infinity', () => {
  for (const unit of Object.keys(unitMeasures) as Unit[]) {
    expect(formatQuantity(Number.NaN, unit, metric)).toBe('not known');
    expect(formatQuantity(Number.NEGATIVE_INFINITY, unit, feet)).toBe('not known');
  }
});

test('formatQuantity writes every unit at every size', () => {
  const anyUnit = fc.constantFrom(...(Object.keys(unitMeasures) as Unit[]));
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), anyUnit, (value, unit) => {
      expect(formatQuantity(value, unit, metric)).toMatch(/\d|^not known$/);
      expect(formatQuantity(value, unit, feet)).not.toMatch(/NaN|Infinity|undefined|-0(?![.,\d])/);
    }),
  );
});
