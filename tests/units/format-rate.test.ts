import { expect, test } from 'vitest';
import { formatRate } from '../../src/units/format-rate';

// Source: the rates of ITU-R BT.709-6 and BT.2020-2; 24/1.001 = 23.976024, 60/1.001 = 59.940060, 120/1.001 = 119.880120.
test.each([
  [24_000, 1001, '23.976'],
  [30_000, 1001, '29.97'],
  [48_000, 1001, '47.952'],
  [60_000, 1001, '59.94'],
  [120_000, 1001, '119.88'],
  [24, 1, '24'],
  [60, 1, '60'],
  [25, 2, '12.5'],
  [1, 3, '0.333'],
])('formatRate of %i frames in %i seconds is %s', (frames, seconds, text) => {
  expect(formatRate({ frames, seconds })).toBe(text);
});
