import { expect, test } from 'vitest';
import { plainNumber } from '../../src/files/plain-number';

test('plainNumber takes off what binary fractions add, and nothing that was there', () => {
  expect(plainNumber(0.1 + 0.2)).toBe(0.3);
  expect(plainNumber(7315.2)).toBe(7315.2);
  expect(plainNumber(-1_234_567.891)).toBe(-1_234_567.891);
});

test('plainNumber of what is no number is null', () => {
  expect(plainNumber(Number.NaN)).toBeNull();
  expect(plainNumber(Number.POSITIVE_INFINITY)).toBeNull();
});
