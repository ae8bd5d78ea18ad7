import { expect, test } from 'vitest';
import type { Mode } from '../../src/plan/picture';
import { sameMode } from '../../src/plan/same-mode';

const mode = (frames: number, depthBits: Mode['depthBits'], pictures = 1, seconds = 1): Mode => ({
  rate: { frames, seconds },
  depthBits,
  pictures,
});

test('sameMode compares rates as fractions', () => {
  expect(sameMode(mode(24_000, 8, 1, 1001), mode(48_000, 8, 1, 2002))).toBe(true);
  expect(sameMode(mode(24_000, 8, 1, 1001), mode(24, 8))).toBe(false);
});

test('sameMode tells depth and pictures apart', () => {
  expect(sameMode(mode(60, 8), mode(60, 10))).toBe(false);
  expect(sameMode(mode(30, 8, 2), mode(60, 8, 1))).toBe(false);
});
