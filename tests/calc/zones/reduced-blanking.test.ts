import fc from 'fast-check';
import { expect, test } from 'vitest';
import reference from '../../../fixtures/reference/cvt-rbv2-timings.json';
import { reducedBlanking } from '../../../src/calc/zones/reduced-blanking';

// Source: fixtures/reference/cvt-rbv2-timings.json, computed by an outside program. One row has lost a kilohertz to that
// program's floating point, and says so in `exactArithmetic`.
test.each(reference.timings)('reducedBlanking of $id is the published timing', (row) => {
  const timing = reducedBlanking(row.width, row.height, { frames: row.requestedHz, seconds: 1 });
  expect(timing?.totalWidth).toBe(row.hTotal);
  expect(timing?.totalHeight).toBe(row.vTotal);
  const published = row.exactArithmetic?.pixelClockMHz ?? row.pixelClockMHz;
  expect(Math.round(timing!.pixelClockHz / 1000)).toBe(Math.round(published * 1000));
});

test('the fixture has three dozen timings, odd sizes among them', () => {
  expect(reference.timings).toHaveLength(36);
  expect(reference.timings.map(({ id }) => id)).toContain('2808x2288@60-CVT-RBv2');
});

// Handbook: 2808 x 2808 at 60 and 10 bit is some 500 MHz of pixel clock.
test('reducedBlanking of 2808 x 2808 at 60 asks some 500 MHz', () => {
  const { pixelClockHz } = reducedBlanking(2808, 2808, { frames: 60, seconds: 1 })!;
  expect(pixelClockHz / 1e6).toBeGreaterThan(495);
  expect(pixelClockHz / 1e6).toBeLessThan(505);
});

test('reducedBlanking takes x1000/1001 rates as they are', () => {
  // 1920 x 1080 at 60000/1001: the lines of blanking of 60 Hz, floor(60000 x 2000 x 1111 / 1001 / 1000) kHz.
  const timing = reducedBlanking(1920, 1080, { frames: 60_000, seconds: 1001 });
  expect(timing).toEqual({ totalWidth: 2000, totalHeight: 1111, pixelClockHz: 133_186_000 });
});

test('reducedBlanking is null where a frame is no longer than its least blanking', () => {
  // 460 microseconds: 1,000,000 / 460 is 2173.9 frames a second.
  expect(reducedBlanking(100, 100, { frames: 2174, seconds: 1 })).toBeNull();
  expect(reducedBlanking(100, 100, { frames: 50_000, seconds: 23 })).toBeNull();
  expect(reducedBlanking(100, 100, { frames: 2173, seconds: 1 })).not.toBeNull();
});

test('reducedBlanking never asks more than the rate, nor a kilohertz less', () => {
  const size = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(
      size,
      size,
      fc.integer({ min: 1, max: 500 }),
      fc.constantFrom(1, 1001),
      (width, height, fps, seconds) => {
        const timing = reducedBlanking(width, height, { frames: seconds === 1 ? fps : fps * 1000, seconds })!;
        const rate = (seconds === 1 ? fps : fps * 1000) / seconds;
        const asked = rate * timing.totalWidth * timing.totalHeight;
        expect(timing.pixelClockHz).toBeLessThanOrEqual(asked * (1 + 1e-12));
        expect(timing.pixelClockHz).toBeGreaterThan(asked * (1 - 1e-12) - 1000);
      },
    ),
  );
});
