import { expect, test } from 'vitest';
import type { DisplayOptions } from '../../src/units/display-options';
import { formatLength } from '../../src/units/format-length';

const metric: DisplayOptions = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' };
const feet: DisplayOptions = { lengths: 'feet', locale: 'en-US', currency: 'USD' };

test.each([
  [0, '0 mm'],
  [2.604, '2.6 mm'],
  [4.363, '4.36 mm'],
  [87.5, '87.5 mm'],
  [304.8, '305 mm'],
  [999.4, '999 mm'],
  [999.6, '1.00 m'],
  [7315.2, '7.32 m'],
  [7300, '7.30 m'],
  [99_994, '99.99 m'],
  [99_996, '100.0 m'],
  [-1500, '-1.50 m'],
])('formatLength(%f) in metric is %s', (mm, text) => {
  expect(formatLength(mm, metric)).toBe(text);
});

test.each([
  [0, '0"'],
  [4.363, '4.36 mm'],
  [25.4, '1"'],
  [7315.2, `24' 0"`],
])('formatLength(%f) in feet is %s', (mm, text) => {
  expect(formatLength(mm, feet)).toBe(text);
});

test('formatLength takes more digits, or finer fractions, where asked', () => {
  expect(formatLength(6000.4, metric)).toBe('6.00 m');
  expect(formatLength(6000.4, metric, 2)).toBe('6.0004 m');
  expect(formatLength(304.8 + 25.4 / 16, feet, 1)).toBe(`1' 1/16"`);
});
