import { expect, test } from 'vitest';
import { scanJsonText } from '../../src/plan/scan-json-text';

test.each([
  ['', 0, false],
  ['{}', 1, false],
  ['{"a":[{"b":1}]}', 3, false],
  ['{"a":[1,2', 2, true],
  ['{"a":"cut', 1, true],
  ['{"a":"]}[["}', 1, false],
  ['{"a":"\\"}"', 1, true],
  ['[]]', 1, false],
])('scanJsonText(%s) is %i deep and ends inside: %s', (text, deepest, endsInside) => {
  expect(scanJsonText(text)).toEqual({ deepest, endsInside });
});

test('scanJsonText goes a million deep', () => {
  expect(scanJsonText('['.repeat(1_000_000))).toEqual({ deepest: 1_000_000, endsInside: true });
});
