import { expect, test } from 'vitest';
import { formatNumber } from '../../src/units/format-number';

const none = { least: 0, most: 0 };

// Source: SI Brochure, 9th edition, 5.4.4: groups of three by a thin space, four digits may stand together.
test('formatNumber sets groups apart by a narrow space from five digits on, in every locale', () => {
  expect(formatNumber(1836, none, 'en-US')).toBe('1836');
  expect(formatNumber(18_360, none, 'en-US')).toBe('18\u202f360');
  expect(formatNumber(1_836_000, none, 'de-DE')).toBe('1\u202f836\u202f000');
});

test('formatNumber takes the decimal sign of the locale', () => {
  expect(formatNumber(7.32, { least: 2, most: 2 }, 'en-GB')).toBe('7.32');
  expect(formatNumber(7.32, { least: 2, most: 2 }, 'de-DE')).toBe('7,32');
});

test('formatNumber cuts to the most and fills to the least decimals', () => {
  expect(formatNumber(1.23456, { least: 0, most: 3 }, 'en')).toBe('1.235');
  expect(formatNumber(1.5, { least: 2, most: 3 }, 'en')).toBe('1.50');
});

test('formatNumber writes no minus before nothing, and digits of one alphabet', () => {
  expect(formatNumber(-0.001, { least: 0, most: 2 }, 'en')).toBe('0');
  expect(formatNumber(-0, none, 'en')).toBe('0');
  expect(formatNumber(12, none, 'ar-EG')).toBe('12');
});
