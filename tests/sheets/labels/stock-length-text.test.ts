import { expect, test } from 'vitest';
import { stockLengthText } from '../../../src/sheets/labels/stock-length-text';

// A foot is 304.8 mm: 50 ft are 15,240 mm.
test.each([
  [{ leastMm: 11_200, stockMm: 15_000 }, 'metric', '15 m'],
  [{ leastMm: 13_000, stockMm: 15_240 }, 'feet', '50 ft'],
  [{ leastMm: 110_550, stockMm: null }, 'metric', 'at least 111 m'],
] as const)('stockLengthText of %j in %s reads %s', (length, system, text) => {
  expect(stockLengthText(length, system)).toBe(text);
});
