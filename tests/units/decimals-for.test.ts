import { expect, test } from 'vitest';
import { decimalsFor } from '../../src/units/decimals-for';

test.each([
  [0, 2],
  [9.99, 2],
  [9.994, 2],
  [9.996, 1],
  [12.3, 1],
  [99.94, 1],
  [99.96, 0],
  [100, 0],
  [-4.2, 2],
  [-42, 1],
  [1e12, 0],
])('decimalsFor(%f, 2) is %i', (value, decimals) => {
  expect(decimalsFor(value, 2)).toBe(decimals);
});

test('decimalsFor never gives more than asked', () => {
  expect(decimalsFor(1.5, 0)).toBe(0);
  expect(decimalsFor(1.5, 1)).toBe(1);
});
