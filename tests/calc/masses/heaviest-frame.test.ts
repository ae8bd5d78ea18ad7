import { expect, test } from 'vitest';
import { heaviestFrame } from '../../../src/calc/masses/heaviest-frame';

test('heaviestFrame takes neighbouring columns from the left, the last frame what is left', () => {
  const columns = Float64Array.of(10, 20, 30, 5, 26);
  expect(heaviestFrame(columns, 1)).toEqual({ fromColumn: 2, massKg: 30 });
  expect(heaviestFrame(columns, 2)).toEqual({ fromColumn: 2, massKg: 35 }); // 30, 35, 26
  expect(heaviestFrame(columns, 3)).toEqual({ fromColumn: 0, massKg: 60 });
  expect(heaviestFrame(columns, 1000)).toEqual({ fromColumn: 0, massKg: 91 });
  expect(heaviestFrame(new Float64Array(0), 2).massKg).toBe(0);
});
