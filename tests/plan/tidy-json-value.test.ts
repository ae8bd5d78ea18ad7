import { expect, test } from 'vitest';
import { tidyJsonValue } from '../../src/plan/tidy-json-value';

test('tidyJsonValue turns every -0 into 0', () => {
  const value = JSON.parse('{"a": -0, "b": [-0.0, 1, {"c": -0e5}], "d": "-0"}');
  expect(tidyJsonValue(value)).toBeUndefined();
  expect(value).toEqual({ a: 0, b: [0, 1, { c: 0 }], d: '-0' });
  expect(Object.is(value.b[2].c, 0)).toBe(true);
});

test.each([
  ['{"__proto__": {}}', ['__proto__']],
  ['{"a": [{"constructor": 1}]}', ['a', 0, 'constructor']],
  ['{"a": {"prototype": null}}', ['a', 'prototype']],
])('tidyJsonValue finds the key that no document may have in %s', (text, path) => {
  expect(tidyJsonValue(JSON.parse(text))).toEqual({ path, reason: 'this program knows no such field' });
});

test('tidyJsonValue finds a list longer than any of a plan', () => {
  const rows = Array.from({ length: 500_001 }, () => 0);
  expect(tidyJsonValue({ a: { b: rows } })).toEqual({ path: ['a', 'b'], reason: 'at most 500000 entries' });
  expect(tidyJsonValue({ a: { b: rows.slice(1) } })).toBeUndefined();
});

test('tidyJsonValue takes whatever JSON may hold', () => {
  for (const text of ['null', '4', '"x"', '[]', 'true']) expect(tidyJsonValue(JSON.parse(text))).toBeUndefined();
  expect(tidyJsonValue(JSON.parse(`${'['.repeat(100_000)}${']'.repeat(100_000)}`))).toBeUndefined();
});
