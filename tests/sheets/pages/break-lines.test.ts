import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines } from '../../../src/sheets/pages/break-lines';
import { printableText } from '../../../src/sheets/pages/printable-text';
import { textWidthMm } from '../../../src/sheets/pages/text-width';

// Mono at 10 mm: every sign is 6 mm wide.
test('breakLines breaks at blanks, and at no hyphen', () => {
  expect(breakLines('run 3B-04 to C38', 'mono', 10, 48)).toEqual(['run', '3B-04 to', 'C38']);
  expect(breakLines('run 3B-04 to C38', 'mono', 10, 54)).toEqual(['run 3B-04', 'to C38']);
});

test('breakLines breaks a word only where it alone is too wide, and keeps breaks of the text', () => {
  expect(breakLines('ab cdefghij', 'mono', 10, 24)).toEqual(['ab', 'cdef', 'ghij']);
  expect(breakLines('a\n\nb', 'mono', 10, 60)).toEqual(['a', '', 'b']);
  expect(breakLines('', 'mono', 10, 60)).toEqual(['']);
  expect(breakLines('abc', 'mono', 10, 1)).toEqual(['a', 'b', 'c']);
});

test('breakLines loses no sign, and no line is wider than asked', () => {
  const face = fc.constantFrom('sans' as const, 'strong' as const, 'mono' as const);
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 200 }),
      face,
      fc.double({ min: 8, max: 90, noNaN: true }),
      (text, of, width) => {
        const lines = breakLines(text, of, 3, width);
        for (const line of lines) expect(textWidthMm(line, of, 3)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(printableText(text, of).replaceAll(' ', ''));
      },
    ),
  );
});
