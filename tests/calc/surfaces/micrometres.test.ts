import { describe, expect, it } from 'vitest';
import { fromMicrometres, toMicrometres } from '../../../src/calc/surfaces/micrometres';

describe('toMicrometres', () => {
  it('counts exact multiples of a module exactly, where floating point loses one', () => {
    // In floating point, floor(n * 0.9 / 0.9) misses some of the first hundred n; so does 0.64.
    for (const moduleMm of [900, 640, 0.9, 0.64, 609.6]) {
      for (let n = 1; n <= 100; n++) {
        const lengthUm = toMicrometres(moduleMm) * n;
        expect(toMicrometres(fromMicrometres(lengthUm)) / toMicrometres(moduleMm)).toBe(n);
      }
    }
  });

  it('gives whole numbers for every length of at most three decimals', () => {
    expect(toMicrometres(0.001)).toBe(1);
    expect(toMicrometres(7315.2)).toBe(7_315_200);
    expect(toMicrometres(-1234.567)).toBe(-1_234_567);
  });
});

describe('fromMicrometres', () => {
  it('undoes toMicrometres', () => {
    for (const mm of [0, 0.001, 7315.2, 99999.999, -12.5]) expect(fromMicrometres(toMicrometres(mm))).toBe(mm);
  });
});
