import { expect, test } from 'vitest';
import { withoutNegativeZero } from '../../../src/plan/commands/without-negative-zero';

test('withoutNegativeZero puts 0 in place of -0, at any depth, and leaves the value it was given', () => {
  const given = { a: [1, { b: -0 }], c: -0, d: 'text', e: null };
  const clean = withoutNegativeZero(given);
  expect(clean).toEqual({ a: [1, { b: 0 }], c: 0, d: 'text', e: null });
  expect(Object.is(given.c, -0)).toBe(true);
  expect(Object.is(withoutNegativeZero(-0), 0)).toBe(true);
});

test('withoutNegativeZero keeps the identity of what has none', () => {
  const given = { a: { b: 1 }, c: { d: -0 } };
  const clean = withoutNegativeZero(given);
  expect(clean.a).toBe(given.a);
  expect(withoutNegativeZero(given.a)).toBe(given.a);
});

test('withoutNegativeZero does not look into what was there before', () => {
  const kept = { d: -0 };
  const previous = { a: kept };
  expect(withoutNegativeZero({ a: kept, b: 1 }, previous).a).toBe(kept);
});
