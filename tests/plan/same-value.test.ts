import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameValue } from '../../src/plan/same-value';

test('sameValue does not mind the order of keys, but that of entries', () => {
  expect(sameValue({ a: 1, b: [1, { c: null }] }, { b: [1, { c: null }], a: 1 })).toBe(true);
  expect(sameValue([1, 2], [2, 1])).toBe(false);
});

test.each([
  [{ a: 1 }, { a: 1, b: undefined }],
  [
    { a: 1, b: 2 },
    { a: 1, c: 2 },
  ],
  [[], {}],
  [null, {}],
  [{ 0: 1 }, [1]],
  ['1', 1],
  [{ toString: 1 }, {}],
])('sameValue tells %j and %j apart', (a, b) => {
  expect(sameValue(a, b)).toBe(false);
  expect(sameValue(b, a)).toBe(false);
});

test('sameValue agrees with the text of what JSON can hold', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 3 }), fc.jsonValue({ maxDepth: 3 }), (a, b) => {
      expect(sameValue(a, structuredClone(a))).toBe(true);
      if (JSON.stringify(a) !== JSON.stringify(b) && typeof a !== 'object') expect(sameValue(a, b)).toBe(false);
    }),
  );
});
