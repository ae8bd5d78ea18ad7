import { describe, expect, it } from 'vitest';
import { columnFootprints } from '../../../src/calc/walls/column-footprints';

const front = Float64Array.of(0, 0, 500, 0);

describe('columnFootprints', () => {
  it('runs anticlockwise from the front left corner, backs on the left of the walk', () => {
    expect([...columnFootprints(front, Float64Array.of(0), 80, 80)]).toEqual([0, 0, 500, 0, 500, 80, 0, 80]);
  });

  it('turns with its face', () => {
    // A face along 4-3-5: backs 80 behind are off by (-48, 64).
    const corners = columnFootprints(Float64Array.of(100, 200, 500, 500), Float64Array.of(0), 80, 80);
    expect([...corners].map((value) => Math.round(value * 1e6) / 1e6)).toEqual([100, 200, 500, 500, 452, 564, 52, 264]);
  });

  it('is narrower at the back of a bevelled frame, by what the widest convex joint asks for', () => {
    const two = Float64Array.of(0, 0, 500, 0, 500, 0, 1000, 0);
    const corners = columnFootprints(two, Float64Array.of(0, -10), 80, 0);
    // 80 tan 5 degrees = 6.999093 off each side.
    expect(corners[4]).toBeCloseTo(500 - 6.999093, 5);
    expect(corners[6]).toBeCloseTo(6.999093, 5);
  });

  it('is never thinner than five millimetres, nor narrower than nothing at its back', () => {
    expect(columnFootprints(front, Float64Array.of(0), 0.001, 0.001)[5]).toBe(5);
    const narrow = Float64Array.of(0, 0, 10, 0, 10, 0, 20, 0);
    const corners = columnFootprints(narrow, Float64Array.of(0, -90), 800, 0);
    expect(corners[4]! - corners[6]!).toBeCloseTo(0.2, 9);
  });
});
