import { describe, expect, it } from 'vitest';
import { turnsHalf } from '../../../src/calc/walls/turns-half';

describe('turnsHalf', () => {
  it('holds from half a turn on, concave or convex', () => {
    expect(turnsHalf(180)).toBe(true);
    expect(turnsHalf(-200)).toBe(true);
    expect(turnsHalf(179.9)).toBe(false);
    expect(turnsHalf(0)).toBe(false);
  });

  it('holds for a sum of joints that rounding leaves just short', () => {
    let turns = 0;
    for (let i = 0; i < 1800; i++) turns += 0.1;
    expect(turns).not.toBe(180);
    expect(turnsHalf(turns)).toBe(true);
  });
});
