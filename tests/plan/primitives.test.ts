import { expect, test } from 'vitest';
import {
  frameRate,
  id,
  label,
  lengthMm,
  longText,
  offsetMm,
  shortLabel,
  sizeMm,
  turnDeg,
} from '../../src/plan/primitives';

const takes = (schema: { safeParse: (value: unknown) => { success: boolean } }, value: unknown) =>
  schema.safeParse(value).success;

test('a length is whole micrometres, whatever its binary fraction looks like', () => {
  // 24 ft and 1/16 in: 1.5875 mm has four decimals.
  expect(takes(lengthMm, 7315.2)).toBe(true);
  expect(takes(lengthMm, 0.1 + 0.2)).toBe(true);
  expect(takes(lengthMm, 999_999.999)).toBe(true);
  expect(takes(lengthMm, 1.5875)).toBe(false);
  expect(takes(offsetMm, -0.0005)).toBe(false);
});

test('lengths keep to their bounds, and a size is above zero', () => {
  expect(takes(lengthMm, 0)).toBe(true);
  expect(takes(lengthMm, -0.001)).toBe(false);
  expect(takes(sizeMm, 0)).toBe(false);
  expect(takes(sizeMm, 0.001)).toBe(true);
  expect(takes(offsetMm, -1_000_000)).toBe(true);
  expect(takes(offsetMm, -1_000_000.001)).toBe(false);
  expect(takes(sizeMm, Number.NaN)).toBe(false);
  expect(takes(sizeMm, Number.POSITIVE_INFINITY)).toBe(false);
});

test('an id has letters, digits and hyphens', () => {
  expect(['a', 'wall-1', '4K', 'a'.repeat(64)].every((text) => takes(id, text))).toBe(true);
  expect(['', '-a', 'a b', 'ä', '__proto__', 'a'.repeat(65)].some((text) => takes(id, text))).toBe(false);
});

test('a line of text has one line and no half characters, a long text may have several lines', () => {
  expect(takes(label, 'Osier 2.5, fünf × 4 🎬')).toBe(true);
  expect(takes(label, 'two\nlines')).toBe(false);
  expect(takes(label, '\ud83c')).toBe(false);
  expect(takes(shortLabel, 'C\u0000')).toBe(false);
  expect(takes(longText, 'two\nlines,\ttabbed')).toBe(true);
  expect(takes(longText, '\u0007')).toBe(false);
});

test('a turn is a quarter, a rate an exact fraction', () => {
  expect(takes(turnDeg, 270)).toBe(true);
  expect(takes(turnDeg, 45)).toBe(false);
  expect(takes(frameRate, { frames: 24_000, seconds: 1001 })).toBe(true);
  expect(takes(frameRate, { frames: 23.976, seconds: 1 })).toBe(false);
});
