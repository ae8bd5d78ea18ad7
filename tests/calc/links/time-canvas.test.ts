import { expect, test } from 'vitest';
import { type TimingChoice, timeCanvas } from '../../../src/calc/links/time-canvas';
import type { FrameRate } from '../../../src/plan/primitives';

const at60: FrameRate = { frames: 60, seconds: 1 };
const timed = (width: number, height: number, choice: Partial<TimingChoice>, rate = at60) =>
  timeCanvas({ width, height }, rate, { timing: 'container', containerId: null, ...choice });

// Published clocks (fixtures/reference/cvt-timings.json and link-fixed-modes.json).
test.each([
  ['reduced-2', 133_320_000],
  ['reduced-1', 138_500_000],
  ['full', 173_000_000],
  ['cta', 148_500_000],
  ['container', 148_500_000],
] as const)('timeCanvas of 1920 x 1080 at 60 with timing %s', (timing, pixelClockHz) => {
  expect(timed(1920, 1080, { timing })).toMatchObject({ width: 1920, height: 1080, pixelClockHz });
});

test('timeCanvas takes the least fixed mode that holds the canvas at its rate', () => {
  // 2000 x 1000: 2048 x 1152 of DMT (162 MHz) before 2560 x 1080 of CTA-861 (198 MHz).
  expect(timed(2000, 1000, {})).toMatchObject({ width: 2048, height: 1152, pixelClockHz: 162_000_000 });
  // At 50 there is no such DMT mode.
  expect(timed(2000, 1000, {}, { frames: 50, seconds: 1 })).toMatchObject({ width: 2560, height: 1080 });
  expect(timed(2808, 2288, {})).toMatchObject({ width: 7680, height: 4320, pixelClockHz: 2_376_000_000 });
});

test('timeCanvas keeps to the raster of the mode that is named, at any rate it runs at', () => {
  // Code 97 is 3840 x 2160 at 60; at 24 the same raster is code 93, 297 MHz.
  const at24 = { frames: 24, seconds: 1 };
  expect(timed(1920, 1080, { containerId: 'cta-97' }, at24)).toMatchObject({ width: 3840, pixelClockHz: 297_000_000 });
  expect(timed(1920, 1080, { containerId: 'cta-97' })).toMatchObject({ width: 3840, pixelClockHz: 594_000_000 });
});

test.each([
  ['too-small', timed(3841, 2160, { containerId: 'cta-97' })],
  ['too-small', timed(10_241, 100, {})],
  ['unknown-container', timed(100, 100, { containerId: 'cta-0' })],
  ['no-mode-at-this-rate', timed(1920, 1080, {}, { frames: 72, seconds: 1 })],
  ['no-mode-at-this-rate', timed(1920, 1080, { timing: 'cta' }, { frames: 72, seconds: 1 })],
  ['no-mode-of-this-size', timed(1919, 1080, { timing: 'cta' })],
  ['too-fast', timed(100, 100, { timing: 'reduced-2' }, { frames: 3000, seconds: 1 })],
  ['too-fast', timed(100, 100, { timing: 'reduced-1' }, { frames: 3000, seconds: 1 })],
  ['too-fast', timed(100, 100, { timing: 'full' }, { frames: 3000, seconds: 1 })],
])('timeCanvas says why there is no timing: %s', (why, found) => {
  expect(found).toBe(why);
});
