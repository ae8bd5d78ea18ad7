import { expect, test } from 'vitest';
import { inputPayload } from '../../../src/calc/zones/input-payload';
import { mode } from '../ports/plain-items';

const canvas = { width: 1920, height: 1080 };

// 133.320 MHz is the published clock of 1920 x 1080 at 60 (fixtures/reference/cvt-rbv2-timings.json).
test('inputPayload is clock x three colours x depth of the mode that asks most', () => {
  expect(inputPayload(canvas, [mode(60, 10)])).toBe(133_320_000 * 30);
  expect(inputPayload(canvas, [mode(24, 12), mode(60, 10)])).toBe(133_320_000 * 30);
  // 24 fps at 12 bit: 52.560 MHz x 36 is less.
  expect(inputPayload(canvas, [mode(24, 12)])).toBe(52_560_000 * 36);
});

test('inputPayload counts interleaved pictures', () => {
  expect(inputPayload(canvas, [mode(30, 8, 2)])).toBe(133_320_000 * 24);
});

test('inputPayload of a rate too fast for any blanking is infinite', () => {
  expect(inputPayload(canvas, [mode(60), mode(3000)])).toBe(Number.POSITIVE_INFINITY);
});
