import { describe, expect, it } from 'vitest';
import { edgeCrossesPlace } from '../../../src/calc/ceilings/edge-crosses-place';

const place = { fromU: 0, toU: 10, fromV: 0, toV: 10 };
const crosses = (aU: number, aV: number, bU: number, bV: number) => edgeCrossesPlace({ aU, aV, bU, bV }, place);

describe('edgeCrossesPlace', () => {
  it('holds for an edge through, into or inside the place', () => {
    expect(crosses(-5, 5, 15, 6)).toBe(true);
    expect(crosses(5, 5, 20, 20)).toBe(true);
    expect(crosses(4, 4, 6, 5)).toBe(true);
    expect(crosses(-5, 14, 14, -5)).toBe(true);
  });

  it('does not hold for an edge along a side or through a corner only', () => {
    expect(crosses(0, -5, 0, 15)).toBe(false);
    expect(crosses(-5, 10, 15, 10)).toBe(false);
    expect(crosses(-5, 5, 5, -5)).toBe(false);
    expect(crosses(-10, 10, 10, -10)).toBe(false);
    expect(crosses(10, 5, 20, 5)).toBe(false);
  });

  it('does not hold for an edge that passes by', () => {
    expect(crosses(-1, 20, 12, 11)).toBe(false);
    expect(crosses(12, 0, 12, 10)).toBe(false);
    expect(crosses(-5, 4, 4, -5)).toBe(false);
  });
});
