import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const text = readFileSync('src/ui/styles/tokens.css', 'utf8');

function tokensOf(block: string): ReadonlyMap<string, string> {
  return new Map([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, colour]) => [name!, colour!]));
}

const [lightBlock, darkBlock] = text.split('[data-theme="dark"]');
const themes = { light: tokensOf(lightBlock!), dark: tokensOf(darkBlock!) };

/** Relative luminance and contrast ratio. Source: WCAG 2.2, definitions of those terms. */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

test('contrast of black on white is 21, of a colour on itself 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#1f4e79', '#1f4e79')).toBe(1);
});

const grounds = ['paper', 'sheet', 'soft'];
const texts = ['ink', 'ink-2', 'ink-3', 'pass', 'watch', 'stop', 'accent'];

test.each(['light', 'dark'] as const)('every text colour of the %s theme holds 4.5:1 on every ground', (theme) => {
  const tokens = themes[theme];
  for (const ground of grounds) {
    for (const colour of texts) {
      expect(contrast(tokens.get(colour)!, tokens.get(ground)!), `${colour} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  }
  expect(contrast(tokens.get('on-accent')!, tokens.get('accent')!)).toBeGreaterThanOrEqual(4.5);
});

test.each(['light', 'dark'] as const)('the edge of a field in the %s theme holds 3:1 on every ground', (theme) => {
  const tokens = themes[theme];
  for (const ground of grounds) expect(contrast(tokens.get('field')!, tokens.get(ground)!)).toBeGreaterThanOrEqual(3);
});
