import { describe, expect, it } from 'vitest';
import { circleSide } from '../../../src/calc/ceilings/circle-side';

describe('circleSide', () => {
  it('tells inside, on and outside', () => {
    expect(circleSide(3, 4, 5)).toBe(0);
    expect(circleSide(-3, -4, 5)).toBe(0);
    expect(circleSide(3, 3, 5)).toBe(-1);
    expect(circleSide(4, 4, 5)).toBe(1);
  });

  it('stays exact where squares no longer fit a float', () => {
    // Pythagorean triple 3-4-5 times 10^8, and half a micrometre beside it: the squares need 57 bits.
    const k = 1e8;
    expect(circleSide(3 * k, 4 * k, 5 * k)).toBe(0);
    expect(circleSide(3 * k + 1, 4 * k, 5 * k)).toBe(1);
    expect(circleSide(3 * k, 4 * k - 1, 5 * k)).toBe(-1);
  });
});
