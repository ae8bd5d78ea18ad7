import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reducedBlanking1 } from '../../../src/calc/links/reduced-blanking-1';
import { publishedTimings } from './published-timings';

const published = publishedTimings('reduced-1');

// Source: fixtures/reference/cvt-timings.json, printed by an outside program, the command in every row.
test.each(published)('reducedBlanking1 prints what the program prints: $command', (row) => {
  const timing = reducedBlanking1(row.width, row.height, row.rate)!;
  expect([timing.totalWidth, timing.totalHeight]).toEqual([row.hTotal, row.vTotal]);
  expect(Math.round(timing.pixelClockHz / 1000)).toBe(row.clockKHz);
});

test('reducedBlanking1 widens an odd canvas to whole cells of 8 pixels, so that the raster holds it', () => {
  const odd = reducedBlanking1(2801, 2808, { frames: 60, seconds: 1 });
  expect(odd).toEqual(reducedBlanking1(2808, 2808, { frames: 60, seconds: 1 }));
  expect(odd?.width).toBe(2808);
});

test('reducedBlanking1 is null where a frame is no longer than its least blanking', () => {
  expect(reducedBlanking1(100, 100, { frames: 2174, seconds: 1 })).toBeNull();
  expect(reducedBlanking1(100, 100, { frames: 2173, seconds: 1 })).not.toBeNull();
});

test('reducedBlanking1 never asks more than the rate, nor a clock step less', () => {
  const size = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(
      size,
      size,
      fc.integer({ min: 1, max: 500 }),
      fc.constantFrom(1, 1001),
      (width, height, fps, seconds) => {
        const frames = seconds === 1 ? fps : fps * 1000;
        const timing = reducedBlanking1(width, height, { frames, seconds })!;
        const asked = (frames / seconds) * timing.totalWidth * timing.totalHeight;
        expect(timing.pixelClockHz).toBeLessThanOrEqual(asked * (1 + 1e-12));
        expect(timing.pixelClockHz).toBeGreaterThan(asked * (1 - 1e-12) - 250_000);
        expect(timing.width).toBeGreaterThanOrEqual(width);
      },
    ),
  );
});
