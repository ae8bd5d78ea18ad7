import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reducedBlanking1 } from '../../../src/calc/links/reduced-blanking-1';
import { reducedBlanking2 } from '../../../src/calc/links/reduced-blanking-2';
import { reducedTiming } from '../../../src/calc/links/reduced-timing';

const plain = { blankPixels: 100, leastBlankMicroseconds: 500, leastBlankLines: 10, clockStepsAMHz: 1 };

test('reducedTiming counts lines and clock steps of a case worked by hand', () => {
  // 50 frames: 20,000 microseconds, 19,500 of them for 1000 lines; 500 / 19.5 = 25.6, so 26 lines of blanking.
  // (900 + 100) x 1026 x 50 = 51.3 MHz, in whole MHz 51.
  const rate = { frames: 50, seconds: 1 };
  expect(reducedTiming(900, 1000, rate, { ...plain, lineRate: rate })).toEqual({
    width: 900,
    height: 1000,
    totalWidth: 1000,
    totalHeight: 1026,
    pixelClockHz: 51_000_000,
  });
  // 100 lines: 2.6, so 3, and 10 at the least.
  expect(reducedTiming(900, 100, rate, { ...plain, lineRate: rate })?.totalHeight).toBe(110);
});

// 460 microseconds: 1,000,000 / 460 is 2173.9 frames a second.
test.each([
  ['1', reducedBlanking1],
  ['2', reducedBlanking2],
])('reduced blanking %s is null where a frame is no longer than its least blanking', (_version, blank) => {
  expect(blank(100, 100, { frames: 2174, seconds: 1 })).toBeNull();
  expect(blank(100, 100, { frames: 50_000, seconds: 23 })).toBeNull();
  expect(blank(100, 100, { frames: 2173, seconds: 1 })).not.toBeNull();
});

test.each([
  ['1', reducedBlanking1, 250_000],
  ['2', reducedBlanking2, 1000],
])('reduced blanking %s never asks more than the rate, nor a clock step less', (_version, blank, stepHz) => {
  const size = fc.integer({ min: 1, max: 20_000 });
  const rates = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.boolean());
  fc.assert(
    fc.property(size, size, rates, (width, height, [fps, isWhole]) => {
      const rate = isWhole ? { frames: fps, seconds: 1 } : { frames: fps * 1000, seconds: 1001 };
      const timing = blank(width, height, rate)!;
      const asked = (rate.frames / rate.seconds) * timing.totalWidth * timing.totalHeight;
      expect(timing.pixelClockHz).toBeLessThanOrEqual(asked * (1 + 1e-12));
      expect(timing.pixelClockHz).toBeGreaterThan(asked * (1 - 1e-12) - stepHz);
      expect(timing.width).toBeGreaterThanOrEqual(width);
    }),
  );
});
