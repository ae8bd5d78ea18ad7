import { describe, expect, it } from 'vitest';
import { turnSign } from '../../../src/calc/ceilings/turn-sign';

describe('turnSign', () => {
  it('tells anticlockwise, straight and clockwise', () => {
    expect(turnSign(0, 0, 1, 0, 1, 1)).toBe(1);
    expect(turnSign(0, 0, 2, 2, 5, 5)).toBe(0);
    expect(turnSign(0, 0, 1, 0, 1, -1)).toBe(-1);
  });

  it('stays exact where products no longer fit a float', () => {
    // (k, k - 1) x (k + 1, k) = k^2 - (k^2 - 1) = 1, and with (k - 1, k - 2) it is -1: one part in 10^19.
    const k = 4e9;
    expect(turnSign(0, 0, k, k - 1, 2 * k, 2 * k - 2)).toBe(0);
    expect(turnSign(0, 0, k, k - 1, k + 1, k)).toBe(1);
    expect(turnSign(0, 0, k, k - 1, k - 1, k - 2)).toBe(-1);
  });
});
