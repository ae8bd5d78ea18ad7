import { expect, test } from 'vitest';
import { framePeriodMs } from '../../../src/calc/nodes/frame-period';

test('framePeriodMs is exact for whole rates and for those of x1000/1001', () => {
  expect(framePeriodMs({ frames: 25, seconds: 1 })).toBe(40);
  // 24000/1001: 1001/24 ms.
  expect(framePeriodMs({ frames: 24_000, seconds: 1001 })).toBeCloseTo(1001 / 24, 12);
});
