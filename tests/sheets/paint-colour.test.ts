import { expect, test } from 'vitest';
import { paintColour } from '../../src/sheets/paint-colour';
import { tintCount } from '../../src/sheets/tint-panels';

/** Relative luminance and contrast of WCAG 2.2, section 1.4.3 and its glossary. */
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

test('paintColour gives every tint a colour of its own, on which every pen that letters stands out by 4.5 : 1', () => {
  const tints = Array.from({ length: tintCount }, (_, tint) => paintColour(tint));
  expect(new Set(tints).size).toBe(tintCount);
  for (const ground of [...tints, paintColour('sheet')]) {
    for (const pen of ['ink', 'soft', 'accent', 'limit'] as const) {
      expect(contrast(paintColour(pen), ground)).toBeGreaterThanOrEqual(4.5);
    }
  }
});

test('paintColour begins anew after the last tint', () => {
  expect(paintColour(tintCount + 1)).toBe(paintColour(1));
});
