import { expect, test } from 'vitest';
import {
  groundOfRun,
  pictureInks,
  picturePalette,
  rampInk,
  rampLevels,
} from '../../../../src/calc/outputs/picture/picture-inks';

const palette = picturePalette();
const colour = (ink: number) => [...palette.subarray(ink * 3, ink * 3 + 3)];

test('picturePalette: blank pixels are black and borders white', () => {
  expect(colour(pictureInks.blank)).toEqual([0, 0, 0]);
  expect(colour(pictureInks.border)).toEqual([65535, 65535, 65535]);
});

test('picturePalette: the upper 10 bits of a ramp are its level, the upper 8 that level in 8 bits', () => {
  // ISO/IEC 15948:2004, 12.5: left bit replication; 1023 fills all 16 bits, 0 none.
  for (let level = 0; level < rampLevels; level++) {
    const [value] = colour(rampInk('grey', level));
    expect(value! >> 6).toBe(level);
    expect(value! >> 8).toBe(level >> 2);
  }
  expect(colour(rampInk('grey', 1023))).toEqual([65535, 65535, 65535]);
  expect(colour(rampInk('grey', 0))).toEqual([0, 0, 0]);
});

test('picturePalette: a ramp in a colour has that channel only', () => {
  expect(colour(rampInk('red', 1023))).toEqual([65535, 0, 0]);
  expect(colour(rampInk('green', 512))).toEqual([0, (512 << 6) | (512 >> 4), 0]);
  expect(colour(rampInk('blue', 1023))).toEqual([0, 0, 65535]);
});

test('groundOfRun: runs beside each other differ, and so does each hatching from its ground', () => {
  for (let run = 0; run < 20; run++) {
    const { ground, hatch } = groundOfRun(run);
    expect(colour(ground)).not.toEqual(colour(groundOfRun(run + 1).ground));
    expect(colour(hatch)).not.toEqual(colour(ground));
    expect(ground).toBeGreaterThan(pictureInks.idleHatch);
    expect(hatch).toBeLessThan(rampInk('grey', 0));
  }
});

/** Contrast of two inks. Source: W3C, WCAG 2.1, relative luminance and contrast ratio. */
function contrast(a: number, b: number): number {
  const luminance = (ink: number) => {
    const [r, g, bl] = colour(ink).map((value) => {
      const share = value / 65535;
      return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * bl!;
  };
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

test('names, ports and the plate of an entry stand out from every ground: contrast of 4.5 and more', () => {
  const grounds = [pictureInks.idleGround, ...Array.from({ length: 8 }, (_, run) => groundOfRun(run).ground)];
  for (const ground of grounds) {
    expect(contrast(pictureInks.name, ground)).toBeGreaterThan(4.5);
    expect(contrast(pictureInks.port, ground)).toBeGreaterThan(4.5);
  }
  expect(contrast(pictureInks.blank, pictureInks.entry)).toBeGreaterThan(4.5);
});
