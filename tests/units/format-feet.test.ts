import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatFeet } from '../../src/units/format-feet';

// 24 ft = 24 x 304.8 mm exactly; 6 1/2 in = 165.1 mm exactly.
test.each([
  [0, '0"'],
  [7315.2, `24' 0"`],
  [165.1, '6 1/2"'],
  [7315.2 + 165.1, `24' 6 1/2"`],
  [12.7, '1/2"'],
  [304.8 + 12.7, `1' 1/2"`],
  [304.8, `1' 0"`],
  [-914.4, `-3' 0"`],
  [-3.175, '-1/8"'],
  [-1, '0"'],
  [2100, `6' 10 5/8"`], // 82.677 in = 6 ft 10.677 in, nearest eighth 10.625
])('formatFeet(%f) is %s', (mm, text) => {
  expect(formatFeet(mm)).toBe(text);
});

test('formatFeet rounds up into the next foot instead of writing 12 inches', () => {
  expect(formatFeet(304.7)).toBe(`1' 0"`);
  expect(formatFeet(609.5)).toBe(`2' 0"`);
});

test('formatFeet is never further off than half its step', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constantFrom(8, 16, 64), (mm, denominator) => {
      const read = /^(-)?(?:(\d+)' )?(?:(\d+) )?(?:(\d+)\/(\d+)|(\d+))"$/.exec(formatFeet(mm, denominator))!;
      const [, sign, feet = '0', whole = '0', over = '0', under = '1', inches = '0'] = read;
      const size = Number(feet) * 12 + Number(whole) + Number(inches) + Number(over) / Number(under);
      expect(Math.abs((sign === undefined ? 1 : -1) * size * 25.4 - mm)).toBeLessThanOrEqual(12.7 / denominator + 1e-6);
    }),
  );
});
