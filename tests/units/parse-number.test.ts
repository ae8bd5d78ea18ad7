import { expect, test } from 'vitest';
import { parseNumber } from '../../src/units/parse-number';

test.each([
  ['7.3 m', 7.3, ' m'],
  ['7,3m', 7.3, 'm'],
  ['.5', 0.5, ''],
  ['5.', 5, ''],
  ['0,125', 0.125, ''],
  ['1,2345', 1.2345, ''],
  ['1.234', 1.234, ''],
  ['1/2 in', 0.5, ' in'],
  ['6 1/2"', 6.5, '"'],
  ['6-1/2"', 6.5, '"'],
  ['650 000 px', 650_000, ' px'],
  ['1 234,5', 1234.5, ''],
  ['24 6', 24, ' 6'],
  ["24' 6", 24, "' 6"],
])('parseNumber(%s) is %f with the rest %j', (text, value, rest) => {
  expect(parseNumber(text)).toEqual({ value, rest });
});

test.each([
  ['1,234', '1,234 can be read in two ways: write 1234 or 1.234.'],
  ['1,234,567', '1,234,567: write one decimal mark, and none for thousands.'],
  ['1.234,5', '1.234,5: write one decimal mark, and none for thousands.'],
  ['1,234.5', '1,234.5: write one decimal mark, and none for thousands.'],
  ['3/0', 'Nothing can be divided by 0.'],
])('parseNumber refuses %s', (text, refused) => {
  expect(parseNumber(text)).toEqual({ refused });
});

test.each(['', 'kg', '-', ',', "'6"])('parseNumber finds no number at the start of %j', (text) => {
  expect(parseNumber(text)).toBeUndefined();
});
