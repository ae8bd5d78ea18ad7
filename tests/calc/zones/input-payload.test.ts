import { expect, test } from 'vitest';
import { inputPayload } from '../../../src/calc/zones/input-payload';
import { leastBlanking } from '../links/least-blanking';
import { mode } from '../ports/plain-items';

const canvas = { width: 1920, height: 1080 };

// 133.320 MHz is the published clock of 1920 x 1080 at 60 (fixtures/reference/cvt-timings.json).
test('inputPayload is clock x three colours x depth of the mode that asks most', () => {
  expect(inputPayload(canvas, [mode(60, 10)], leastBlanking)).toBe(133_320_000 * 30);
  expect(inputPayload(canvas, [mode(24, 12), mode(60, 10)], leastBlanking)).toBe(133_320_000 * 30);
  // 24 fps at 12 bit: 52.560 MHz x 36 is less.
  expect(inputPayload(canvas, [mode(24, 12)], leastBlanking)).toBe(52_560_000 * 36);
});

test('inputPayload counts interleaved pictures', () => {
  expect(inputPayload(canvas, [mode(30, 8, 2)], leastBlanking)).toBe(133_320_000 * 24);
});

test('inputPayload takes the timing that is chosen', () => {
  // CTA-861 code 16: 148.5 MHz.
  expect(inputPayload(canvas, [mode(60)], { timing: 'cta', containerId: null })).toBe(148_500_000 * 24);
});

test('inputPayload is null where a mode has no timing of the kind chosen', () => {
  expect(inputPayload(canvas, [mode(60), mode(3000)], leastBlanking)).toBeNull();
  expect(inputPayload(canvas, [mode(60), mode(72)], { timing: 'cta', containerId: null })).toBeNull();
});
