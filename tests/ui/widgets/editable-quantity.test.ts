import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editableQuantity } from '../../../src/ui/widgets/editable-quantity';
import type { DisplayOptions } from '../../../src/units/display-options';
import { parseQuantity } from '../../../src/units/parse-quantity';
import type { Unit } from '../../../src/units/unit';

const metric: DisplayOptions = { lengths: 'metric', locale: 'de-DE', currency: 'EUR' };
const feet: DisplayOptions = { lengths: 'feet', locale: 'en-US', currency: 'USD' };

// 1 in = 25.4 mm, 1 ft = 304.8 mm: international yard and pound agreement, 1959.
test.each([
  [2100, 'mm', metric, undefined, '2.10', 'm'],
  [7315.2, 'mm', metric, undefined, '7.3152', 'm'],
  [500, 'mm', metric, 'mm', '500', 'mm'],
  [500.125, 'mm', metric, 'mm', '500.125', 'mm'],
  [7315.2, 'mm', feet, undefined, `24' 0"`, ''],
  [165.1, 'mm', feet, undefined, `6 1/2"`, ''],
  [3.175, 'mm', feet, undefined, `1/8"`, ''],
  [0.396875, 'mm', feet, undefined, `1/64"`, ''],
  [2000, 'mm', feet, undefined, `6' 6.740157"`, ''],
  [-304.8, 'mm', feet, undefined, `-1' 0"`, ''],
  [0, 'mm', feet, undefined, `0"`, ''],
  [0.1, 'share', metric, undefined, '10', '%'],
  [0.07, 'share', metric, undefined, '7', '%'],
  [1234567, 'px', metric, undefined, '1234567', 'px'],
  [2.5, 'deg', metric, undefined, '2.5', '°'],
  [1250, 'money', metric, undefined, '1250', ''],
] as const)('editableQuantity of %s %s', (value, unit, options, plain, text, suffix) => {
  expect(editableQuantity(value, unit, options, plain)).toEqual({ text, suffix });
});

const whole = fc.integer({ min: 0, max: 1_000_000 });
const figures: readonly (readonly [Unit, fc.Arbitrary<number>])[] = [
  ['mm', fc.integer({ min: 0, max: 1_000_000_000 }).map((um) => um / 1000)],
  ['deg', fc.integer({ min: -18_000, max: 18_000 }).map((hundredths) => hundredths / 100)],
  ['share', fc.integer({ min: 0, max: 10_000 }).map((parts) => parts / 10_000)],
  ['kg', fc.integer({ min: 0, max: 1_000_000 }).map((grams) => grams / 1000)],
  ['A', fc.integer({ min: 0, max: 100_000 }).map((tenths) => tenths / 10)],
  ['W', whole],
  ['px', whole],
  ['count', whole],
  ['money', whole],
];

test.each(figures)('what a field shows of %s reads back as the same figure', (unit, values) => {
  fc.assert(
    fc.property(values, fc.constantFrom(metric, feet), (value, options) => {
      const { text } = editableQuantity(value, unit, options);
      expect(parseQuantity(text, unit, options)).toEqual({ value });
    }),
  );
});
