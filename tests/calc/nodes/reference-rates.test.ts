import { expect, test } from 'vitest';
import { isMultiple, referenceRates } from '../../../src/calc/nodes/reference-rates';

const whole = (frames: number) => ({ frames, seconds: 1 });

test('isMultiple is exact: 60 is a multiple of 30 and not of 30000/1001', () => {
  expect(isMultiple(whole(60), whole(30))).toBe(true);
  expect(isMultiple(whole(60), { frames: 30_000, seconds: 1001 })).toBe(false);
  expect(isMultiple({ frames: 60_000, seconds: 1001 }, { frames: 30_000, seconds: 1001 })).toBe(true);
  expect(isMultiple(whole(24), whole(25))).toBe(false);
  expect(isMultiple(whole(25), whole(50))).toBe(false);
});

// SMPTE ST 170 and ITU-R BT.1700: 525 lines at 30000/1001, 625 lines at 25 frames a second (from memory).
test('referenceRates of black burst are those of its two line standards, and PTP has every rate', () => {
  expect(referenceRates['black-burst']?.map(({ frames, seconds }) => frames / seconds)).toEqual([25, 30_000 / 1001]);
  expect(referenceRates.ptp).toBeNull();
});
