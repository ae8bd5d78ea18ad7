import fc from 'fast-check';
import { expect, test } from 'vitest';
import { locateJsonFault } from '../../src/plan/locate-json-fault';
import { sampleText } from './sample-plan';

// The caret stands at the character that the grammar of RFC 8259 does not allow.
test.each([
  ['^'],
  ['^oops'],
  ["{^'a': 1}"],
  ['{"a": ^oops}'],
  ['{"a" ^1}'],
  ['{"a": 1 ^"b": 2}'],
  ['{"a": 1, ^}'],
  ['[1, ^]'],
  ['[1 ^2]'],
  ['[1, ^, 2]'],
  ['{"a": 1^]'],
  ['{"a": [1, 2^}'],
  ['[^01]'],
  ['[^1.]'],
  ['[^+1]'],
  ['[^.5]'],
  ['[^-]'],
  ['[^truth]'],
  ['["a^\\x"]'],
  ['["a^\n"]'],
  ['{} ^{}'],
  ['[1] ^,'],
  ['{"a": "cut^'],
  ['{"a": [1, 2^'],
  ['{"a": ^'],
])('locateJsonFault finds the caret in %j', (marked) => {
  expect(locateJsonFault(marked.replace('^', ''))).toBe(marked.indexOf('^'));
});

test('locateJsonFault finds nothing wrong with what parses, and something with what does not', () => {
  const pieces = fc.array(
    fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"\\u00e9"',
      '-1.5e3',
      '0',
      '00',
      'true',
      'nul',
      ' ',
      '\n',
      '"',
      '\\',
    ),
  );
  const parses = (text: string) => {
    try {
      JSON.parse(text);
      return true;
    } catch {
      return false;
    }
  };
  fc.assert(
    fc.property(
      fc.oneof(
        fc.json(),
        pieces.map((all) => all.join('')),
        fc.string(),
      ),
      (text) => {
        expect(locateJsonFault(text) === undefined).toBe(parses(text));
      },
    ),
    { numRuns: 2000 },
  );
});

test('locateJsonFault goes through whole files, a million deep too', () => {
  const text = sampleText('horseshoe');
  expect(locateJsonFault(text)).toBeUndefined();
  expect(locateJsonFault(text.slice(0, 9000))).toBe(9000);
  expect(locateJsonFault('['.repeat(1_000_000))).toBe(1_000_000);
});
