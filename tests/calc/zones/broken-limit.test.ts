import { expect, test } from 'vitest';
import { brokenLimit } from '../../../src/calc/zones/broken-limit';
import { leastBlanking } from '../links/least-blanking';
import { mode, plainProcessor } from '../ports/plain-items';

const canvas = (inputGbps: number | null) =>
  plainProcessor({}, { canvas: { pixels: 1, widest: 4096, highest: 2160, inputGbps } });
const broken = (width: number, height: number, inputGbps: number | null = null, choice = leastBlanking) =>
  brokenLimit({ width, height }, canvas(inputGbps), { processorPixels: 8_000_000 }, [mode(60, 8)], choice);

test('brokenLimit names the first limit that a canvas breaks', () => {
  expect(broken(4096, 1953)).toBeNull();
  expect(broken(4097, 100)).toBe('width');
  expect(broken(100, 2161)).toBe('height');
  expect(broken(4096, 1954)).toBe('pixels');
});

// 1920 x 1080 at 60 and 8 bit: 133.320 MHz x 24 = 3.19968 Gbit/s.
test('brokenLimit holds the canvas against the input where its rate is stated', () => {
  expect(broken(1920, 1080, 3.19968)).toBeNull();
  expect(broken(1920, 1080, 3.1996)).toBe('input');
});

// CTA-861 code 16 takes 148.5 MHz for the same picture: 3.564 Gbit/s at 8 bit.
test('brokenLimit times the canvas as chosen, and by the least blanking where there is no such timing', () => {
  const cta = { timing: 'cta', containerId: null } as const;
  expect(broken(1920, 1080, 3.564, cta)).toBeNull();
  expect(broken(1920, 1080, 3.563, cta)).toBe('input');
  expect(broken(1919, 1080, 3.5, cta)).toBeNull();
});
