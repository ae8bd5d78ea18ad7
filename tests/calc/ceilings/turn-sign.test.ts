import { describe, expect, it } from 'vitest';
import { turnSign } from '../../../src/calc/ceilings/turn-sign';

describe('turnSign', () => {
  it('tells anticlockwise, straight and clockwise', () => {
    expect(turnSign(0, 0, 1, 0, 1, 1)).toBe(1);
    expect(turnSign(0, 0, 2, 2, 5, 5)).toBe(0);
    expect(turnSign(0, 0, 1, 0, 1, -1)).toBe(-1);
  });

  it('stays exact where products no longer fit a float', () => {
    // Three points on the line v = u (k - 1) / k, and one unit beside it.
    const k = 4e9;
    expect(turnSign(0, 0, k, k - 1, 2 * k, 2 * k - 2)).toBe(0);
    expect(turnSign(0, 0, k, k - 1, 2 * k, 2 * k - 1)).toBe(1);
    expect(turnSign(0, 0, k, k - 1, 2 * k, 2 * k - 3)).toBe(-1);
  });
});
