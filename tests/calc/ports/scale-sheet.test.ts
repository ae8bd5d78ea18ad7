import { expect, test } from 'vitest';
import { asNumber } from '../../../src/calc/ports/fraction';
import { countedRate, scaleSheet } from '../../../src/calc/ports/scale-sheet';
import { mode, plainProcessor } from './plain-items';

const { port } = plainProcessor();
const scaled = (frames: number, bits: 8 | 10 | 12, lowestRateHz = 60, padded = false) =>
  asNumber(
    scaleSheet(650_000, mode(frames, bits), {
      ...port,
      lowestRateHz,
      carriageBits: padded ? { at8: 24, at10: 48, at12: 48 } : port.carriageBits,
    }),
  );

// Handbook, usual ranges: 10 bit x 0.8 packed, x 0.5 padded; 12 bit x 0.67, x 0.5 (from memory, common practice, no source).
test.each([
  [10, false, 0.8],
  [12, false, 2 / 3],
  [10, true, 0.5],
  [12, true, 0.5],
] as const)('scaleSheet at %i bit, padded %s, leaves %f of the figure', (bits, padded, share) => {
  expect(scaled(60, bits, 60, padded)).toBeCloseTo(650_000 * share, 6);
});

test('scaleSheet halves the figure at twice the rate, and counts interleaved pictures', () => {
  expect(scaled(120, 8)).toBe(325_000);
  expect(asNumber(scaleSheet(650_000, mode(60, 8, 2), port))).toBe(325_000);
});

test('scaleSheet does not grow below 60 unless the sheet has a lower lowest rate', () => {
  expect(scaled(24, 8)).toBe(650_000);
  expect(scaled(24, 8, 30)).toBe(1_300_000);
  expect(scaled(48, 8, 30)).toBe(812_500);
  expect(scaled(24, 8, 24)).toBe(1_625_000);
});

test('countedRate ignores a lowest rate above the 60 Hz that the sheet speaks of', () => {
  expect(asNumber(countedRate(mode(30), 100))).toBe(60);
  expect(asNumber(countedRate(mode(72), 100))).toBe(72);
});
