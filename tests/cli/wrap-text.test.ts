import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wrapText } from '../../src/cli/wrap-text';

test('wrapText breaks between words, at the width and not before', () => {
  // 'one two' has seven characters.
  expect(wrapText('one two three', 7)).toEqual(['one two', 'three']);
  expect(wrapText('one two three', 6)).toEqual(['one', 'two', 'three']);
});

test('wrapText indents what follows the first line', () => {
  expect(wrapText('one two three', 9, '  ')).toEqual(['one two', '  three']);
});

test('wrapText leaves a word that is longer than the width whole, on a line of its own', () => {
  expect(wrapText('a incomprehensible b', 5)).toEqual(['a', 'incomprehensible', 'b']);
});

test('wrapText keeps together what a no-break space joins', () => {
  expect(wrapText('a 468\u202f000 px', 6)).toEqual(['a', '468\u202f000', 'px']);
});

test('wrapText of nothing is no line', () => {
  expect(wrapText('  ', 10)).toEqual([]);
});

test('wrapText loses no word, and no line of several words is wider than asked', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/)), fc.integer({ min: 1, max: 40 }), (words, width) => {
      const lines = wrapText(words.join(' '), width, ' ');
      expect(lines.flatMap((line) => line.trim().split(' ')).filter((word) => word !== '')).toEqual(words);
      for (const line of lines) {
        if (line.trim().includes(' ')) expect(line.length).toBeLessThanOrEqual(width);
      }
    }),
  );
});
