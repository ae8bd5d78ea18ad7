import { expect, test } from 'vitest';
import { readJsonText } from '../../src/plan/read-json-text';

test('readJsonText gives the value of a text, with or without a byte order mark', () => {
  expect(readJsonText('{"a":[1]}', 'plan')).toEqual({ value: { a: [1] } });
  expect(readJsonText('\ufeff"a"', 'plan')).toEqual({ value: 'a' });
});

test.each([
  ['', 'empty'],
  [' \n', 'empty'],
  ['{"a":', 'cut-short'],
  ['{"a":"b', 'cut-short'],
  ['plan', 'not-json'],
  ['['.repeat(65) + ']'.repeat(65), 'too-deep'],
] as const)('readJsonText names %j: %s', (text, refused) => {
  expect(readJsonText(text, 'plan')).toMatchObject({ refused });
});

test('readJsonText says what the file should have been, and where it is broken', () => {
  expect(readJsonText('['.repeat(99), 'list of ticks')).toMatchObject({
    sentence: expect.stringContaining('list of ticks'),
  });
  expect(readJsonText('{\n  "a": nothing}', 'plan')).toMatchObject({
    sentence: 'This file is not JSON from line 2, column 8 on.',
  });
});
