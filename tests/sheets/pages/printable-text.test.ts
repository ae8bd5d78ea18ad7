import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faceWidths } from '../../../src/sheets/pages/face-widths';
import { missingSign, printableText } from '../../../src/sheets/pages/printable-text';

test('printableText keeps Latin, Greek and Cyrillic letters and joins an accent to its letter', () => {
  expect(printableText('Ø Ä ş Ω Ж 5 µm', 'sans')).toBe('Ø Ä ş Ω Ж 5 µm');
  expect(printableText('e\u0301a\u0308', 'sans')).toBe('éä');
});

test('printableText shows a mark for every sign that the faces have not, one a sign', () => {
  expect(printableText('سلام', 'sans')).toBe(missingSign.repeat(4));
  expect(printableText('壁 A', 'strong')).toBe(`${missingSign} A`);
  expect(printableText('🎬🎬', 'mono')).toBe(missingSign.repeat(2));
  // A lone half of a pair, which no text should have.
  expect(printableText('a\ud83cb', 'mono')).toBe(`a${missingSign}b`);
});

test('printableText leaves out what shows nothing and makes a blank of all white space', () => {
  expect(printableText('\u202eabc\u200b\u00ad\ufe0f', 'sans')).toBe('abc');
  expect(printableText('a\tb\nc\u2003d', 'sans')).toBe('a b c d');
  // A narrow blank that keeps figures together: the face of fixed width has none.
  expect(printableText('1\u202f000', 'mono')).toBe('1 000');
});

test('printableText gives only signs that have a width, for any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.constantFrom('sans', 'strong', 'mono'), (text, face) => {
      for (const sign of printableText(text, face)) expect(faceWidths[face][sign.codePointAt(0)!]).toBeGreaterThan(0);
    }),
  );
});
