import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitText } from '../../../src/sheets/pages/fit-text';
import { textWidthMm } from '../../../src/sheets/pages/text-width';
import { linesHeightMm } from '../../../src/sheets/pages/write-text';

const style = { face: 'mono', sizeMm: 10, colour: '#000000' } as const;

test('fitText leaves a text that has room as it is', () => {
  expect(fitText('abc', style, 18, 13)).toEqual({ lines: ['abc'], style });
});

test('fitText writes smaller where a text has no room, and breaks it', () => {
  const { lines, style: fitted } = fitText('abc def', style, 18, 13);
  expect(lines.join(' ')).toBe('abc def');
  expect(fitted.sizeMm).toBeLessThan(10);
});

test('fitText brings any text of 200 signs into a cell of a title block, whole', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
      const { lines, style: fitted } = fitText(text, style, 60, 6);
      expect(linesHeightMm(fitted, lines.length)).toBeLessThanOrEqual(6);
      for (const line of lines) expect(textWidthMm(line, 'mono', fitted.sizeMm)).toBeLessThanOrEqual(60);
    }),
  );
});
