import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reducedBlanking2 } from '../../../src/calc/links/reduced-blanking-2';
import { publishedTimings } from './published-timings';

const published = publishedTimings('reduced-2');

// Source: fixtures/reference/cvt-timings.json, printed by an outside program, the command in every row.
test.each(published)('reducedBlanking2 prints what the program prints: $command', (row) => {
  const timing = reducedBlanking2(row.width, row.height, row.rate)!;
  expect([timing.totalWidth, timing.totalHeight]).toEqual([row.hTotal, row.vTotal]);
  expect(Math.round(timing.pixelClockHz / 1000)).toBe(row.clockKHz);
});

test('reducedBlanking2 is held against a hundred timings and more, odd sizes and x1000/1001 rates among them', () => {
  expect(published.length).toBeGreaterThan(100);
  expect(published.filter(({ width }) => width === 2808).length).toBeGreaterThan(10);
  expect(published.filter(({ width, height }) => width % 8 > 0 && height % 2 > 0).length).toBeGreaterThan(3);
  expect(published.filter(({ seconds }) => seconds === 1001).length).toBeGreaterThan(20);
});

// Handbook: 2808 x 2808 at 60 and 10 bit is some 500 MHz of pixel clock.
test('reducedBlanking2 of 2808 x 2808 at 60 asks 500.432 MHz', () => {
  expect(reducedBlanking2(2808, 2808, { frames: 60, seconds: 1 })?.pixelClockHz).toBe(500_432_000);
});

test('reducedBlanking2 is null where a frame is no longer than its least blanking', () => {
  // 460 microseconds: 1,000,000 / 460 is 2173.9 frames a second.
  expect(reducedBlanking2(100, 100, { frames: 2174, seconds: 1 })).toBeNull();
  expect(reducedBlanking2(100, 100, { frames: 50_000, seconds: 23 })).toBeNull();
  expect(reducedBlanking2(100, 100, { frames: 2173, seconds: 1 })).not.toBeNull();
});

test('reducedBlanking2 never asks more than the rate, nor a clock step less', () => {
  const size = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(
      size,
      size,
      fc.integer({ min: 1, max: 500 }),
      fc.constantFrom(1, 1001),
      (width, height, fps, seconds) => {
        const frames = seconds === 1 ? fps : fps * 1000;
        const timing = reducedBlanking2(width, height, { frames, seconds })!;
        const asked = (frames / seconds) * timing.totalWidth * timing.totalHeight;
        expect(timing.pixelClockHz).toBeLessThanOrEqual(asked * (1 + 1e-12));
        expect(timing.pixelClockHz).toBeGreaterThan(asked * (1 - 1e-12) - 1000);
        expect(timing.width).toBeGreaterThanOrEqual(width);
      },
    ),
  );
});
