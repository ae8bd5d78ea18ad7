import { describe, expect, it } from 'vitest';
import { ringCandidates } from '../../../../src/calc/finder/rings/ring-candidates';

const wish = { acrossMm: 20_000, openingMm: 4000, columnWidthMm: 500 };

describe('ringCandidates', () => {
  it('mixes the two steps between which the asked joint lies, and takes each of them whole', () => {
    // 2 atan(500 / 20000) = 2.864 degrees: between 2.5 and 5.
    const found = ringCandidates(wish, [10, -5, 5, 0, 2.5], 2);
    expect(new Set(found.map((ring) => ring.lowDeg))).toEqual(new Set([2.5, 5]));
    expect(new Set(found.map((ring) => ring.highDeg))).toEqual(new Set([2.5, 5]));
    expect(found.some((ring) => ring.lowDeg === 2.5 && ring.highs === 0)).toBe(true);
    expect(found.some((ring) => ring.lowDeg === 5 && ring.highs === 0)).toBe(true);
    expect(found.some((ring) => ring.highs > 0)).toBe(true);
  });

  it('mixes straight joints in where the ring is wider than the smallest step bends', () => {
    const found = ringCandidates({ ...wish, acrossMm: 60_000 }, [0, 2.5], 2);
    expect(found.some((ring) => ring.lowDeg === 0 && ring.highDeg === 2.5 && ring.highs > 0)).toBe(true);
  });

  it('takes the widest step alone where the ring is narrower than it bends, and the only step there is', () => {
    expect(new Set(ringCandidates({ ...wish, acrossMm: 5000 }, [0, 5], 2).map((ring) => ring.lowDeg))).toEqual(
      new Set([5]),
    );
    expect(new Set(ringCandidates(wish, [5], 2).map((ring) => ring.lowDeg))).toEqual(new Set([5]));
  });

  it('finds none without a concave step, or with more columns than a segment has', () => {
    expect(ringCandidates(wish, [], 2)).toEqual([]);
    expect(ringCandidates(wish, [-5, 0], 2)).toEqual([]);
    expect(ringCandidates({ ...wish, columnWidthMm: 1 }, [0.001, 0.01], 2)).toEqual([]);
  });

  it('gives only rings that turn by half at least and do not pass their own first column', () => {
    for (const openingMm of [0, 4000, 19_000, 50_000]) {
      for (const { columns, lowDeg, highDeg, highs } of ringCandidates({ ...wish, openingMm }, [0, 2.5, 5], 6)) {
        const turnsDeg = (columns - 1 - highs) * lowDeg + highs * highDeg;
        expect(turnsDeg).toBeGreaterThanOrEqual(180 - 1e-6);
        expect((turnsDeg * columns) / (columns - 1)).toBeLessThanOrEqual(360 + 1e-6);
      }
    }
  });
});
