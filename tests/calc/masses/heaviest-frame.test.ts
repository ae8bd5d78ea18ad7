import { expect, test } from 'vitest';
import { heaviestFrameKg } from '../../../src/calc/masses/heaviest-frame';

test('heaviestFrameKg takes neighbouring columns from the left, the last frame what is left', () => {
  const columns = Float64Array.of(10, 20, 30, 5, 26);
  expect(heaviestFrameKg(columns, 1)).toBe(30);
  expect(heaviestFrameKg(columns, 2)).toBe(35); // 30, 35, 26
  expect(heaviestFrameKg(columns, 3)).toBe(60);
  expect(heaviestFrameKg(columns, 1000)).toBe(91);
  expect(heaviestFrameKg(new Float64Array(0), 2)).toBe(0);
});
