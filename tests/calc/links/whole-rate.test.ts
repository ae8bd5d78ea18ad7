import { expect, test } from 'vitest';
import { wholeRate } from '../../../src/calc/links/whole-rate';

test.each([
  [24_000, 1001, 24, 1],
  [60_000, 1001, 60, 1],
  // The same rate written otherwise: 120000/2002.
  [120_000, 2002, 60, 1],
])('wholeRate of %d/%d is %d', (frames, seconds, whole, one) => {
  expect(wholeRate({ frames, seconds })).toEqual({ frames: whole, seconds: one });
});

test.each([
  [60, 1],
  [1000, 1],
  [25, 2],
  [24_001, 1001],
])('wholeRate leaves %d/%d as it is', (frames, seconds) => {
  expect(wholeRate({ frames, seconds })).toEqual({ frames, seconds });
});
