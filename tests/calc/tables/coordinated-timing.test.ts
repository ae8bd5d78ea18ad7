import { expect, test } from 'vitest';
import { coordinatedTiming } from '../../../src/calc/tables/coordinated-timing';

// VESA CVT 1.2, from memory: each figure typed a second time.
test('coordinatedTiming has the clock steps and least blanking of the standard', () => {
  const { full, reduced1, reduced2 } = coordinatedTiming;
  expect([full.clockStepsAMHz, reduced1.clockStepsAMHz, reduced2.clockStepsAMHz]).toEqual([4, 4, 1000]);
  expect([reduced1.blankPixels, reduced2.blankPixels]).toEqual([160, 80]);
  expect([full.leastSyncAndBackMicroseconds, reduced1.leastBlankMicroseconds]).toEqual([550, 460]);
  expect(reduced2.leastBlankLines).toBe(15);
});
