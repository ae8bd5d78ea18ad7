import { expect, test } from 'vitest';
import { textWidthMm } from '../../../src/sheets/pages/text-width';

test('textWidthMm adds up advance widths, without kerning or ligatures', () => {
  // IBM Plex Mono: every sign 600 of 1000.
  expect(textWidthMm('3B-04', 'mono', 2.5)).toBeCloseTo(5 * 0.6 * 2.5, 9);
  // IBM Plex Sans: figures are 600 each, a blank 236 (hmtx of the file).
  expect(textWidthMm('1 1', 'sans', 10)).toBeCloseTo(14.36, 9);
  expect(textWidthMm('office', 'sans', 10)).toBeCloseTo(
    [...'office'].reduce((sum, sign) => sum + textWidthMm(sign, 'sans', 10), 0),
    9,
  );
  expect(textWidthMm('', 'strong', 10)).toBe(0);
});
