import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stripsForSheet } from '../../src/sheets/strips-for-sheet';

describe('stripsForSheet', () => {
  it('leaves a nearly square surface in one piece', () => {
    expect(stripsForSheet(16, 500, 8000, 800, 800).count).toBe(1);
  });
  it('cuts a long low wall so that it fills the window', () => {
    // 136 x 0.5 m = 68 m long, 6.5 m high in 700 x 600: one strip gives 700 / 68 000 = 0.0103 px a mm. Three give
    // 600 / 3 - 82 = 118 px for 6500 mm = 0.0182 and 700 / (46 x 1.06 x 500) = 0.0287, so 0.0182. Two: 700 / (68 x 1.06 x 500)
    // = 0.0194 and 218 / 6500 = 0.0335, so 0.0194: two are best.
    expect(stripsForSheet(136, 500, 6500, 700, 600).count).toBe(2);
    expect(stripsForSheet(1000, 500, 6500, 700, 600).count).toBeGreaterThan(3);
  });
  it('keeps the same spaces while the window changes by little', () => {
    const spaces = new Set(Array.from({ length: 41 }, (_, k) => stripsForSheet(16, 500, 8000, 800 + k, 800).aboveMm));
    expect(spaces.size).toBeLessThanOrEqual(2);
  });
  it('gives finite spaces and at most a strip a column in any window', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 40, max: 4000 }),
        fc.integer({ min: 40, max: 4000 }),
        (columns, height, width, high) => {
          const { count, aboveMm, belowMm } = stripsForSheet(columns, 500, height, width, high);
          expect(count).toBeGreaterThanOrEqual(1);
          expect(count).toBeLessThanOrEqual(columns);
          expect(Number.isFinite(aboveMm) && Number.isFinite(belowMm)).toBe(true);
        },
      ),
    );
  });
});
