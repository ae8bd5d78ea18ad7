import { describe, expect, it } from 'vitest';
import { wholeLines } from '../../../../src/calc/finder/rings/whole-lines';

describe('wholeLines', () => {
  it('rounds both ways', () => {
    expect(wholeLines(10_400, 500, 5000)).toEqual({
      down: { count: 20, lengthMm: 10_000 },
      up: { count: 21, lengthMm: 10_500 },
    });
  });

  it('gives the same both ways where the length is whole, one to a hundred modules of 0.9 m and 0.64 m', () => {
    for (const stepMm of [900, 640, 609.6, 0.9, 0.64]) {
      for (let n = 1; n <= 100; n++) {
        const lengthMm = Math.round(n * stepMm * 1000) / 1000;
        const lines = { count: n, lengthMm };
        expect(wholeLines(lengthMm, stepMm, 5000), `${n} of ${stepMm}`).toEqual({ down: lines, up: lines });
      }
    }
  });

  it('gives none below one line, and none beyond the most', () => {
    expect(wholeLines(400, 500, 5000)).toEqual({ down: null, up: { count: 1, lengthMm: 500 } });
    expect(wholeLines(5400, 500, 10)).toEqual({ down: { count: 10, lengthMm: 5000 }, up: null });
    expect(wholeLines(1e5, 0.001, 5000)).toEqual({ down: null, up: null });
  });
});
