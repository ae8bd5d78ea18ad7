import { expect, test } from 'vitest';
import { numberRanges } from '../../src/sheets/number-ranges';

test('numberRanges writes neighbours as a range and leaves single numbers alone', () => {
  expect(numberRanges([1, 2, 3, 5])).toBe('1-3, 5');
  expect(numberRanges([4])).toBe('4');
  expect(numberRanges([1, 2, 7, 8])).toBe('1-2, 7-8');
  expect(numberRanges([])).toBe('');
});
