import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPoints } from '../../../src/calc/ceilings/nearest-points';

const place = { fromU: 0, toU: 10, fromV: 0, toV: 10 };

describe('nearestPoints', () => {
  it('measures from a side, from a corner and from the end of an edge', () => {
    expect(nearestPoints(-5, 15, 15, 15, place).distance).toBe(5);
    // 3-4-5 from the corner 10, 10.
    expect(nearestPoints(13, 14, 20, 14, place)).toEqual({ distance: 5, onEdge: [13, 14], onPlace: [10, 10] });
    // The line u + v = 24 passes the corner 10, 10 at sqrt 8.
    expect(nearestPoints(4, 20, 20, 4, place).distance).toBeCloseTo(Math.sqrt(8), 12);
  });

  it('gives 0 where they cross, touch or one holds the other', () => {
    expect(nearestPoints(-5, 5, 15, 5, place).distance).toBe(0);
    expect(nearestPoints(10, -5, 10, 15, place).distance).toBe(0);
    // Where it first comes in.
    expect(nearestPoints(-5, -2, 15, 18, place).onEdge).toEqual([0, 3]);
    expect(nearestPoints(4, 4, 6, 6, place)).toEqual({ distance: 0, onEdge: [4, 4], onPlace: [4, 4] });
  });

  it('finds no nearer pair of points among samples of both', () => {
    const coordinate = fc.double({ min: -30, max: 30, noNaN: true });
    const steps = Array.from({ length: 21 }, (_, k) => k / 20);
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (aU, aV, bU, bV) => {
        const { distance, onEdge, onPlace } = nearestPoints(aU, aV, bU, bV, place);
        expect(Math.hypot(onEdge[0] - onPlace[0], onEdge[1] - onPlace[1])).toBeCloseTo(distance, 9);
        for (const t of steps) {
          const u = aU + t * (bU - aU);
          const v = aV + t * (bV - aV);
          const off = Math.hypot(Math.max(0, -u, u - 10), Math.max(0, -v, v - 10));
          expect(distance).toBeLessThanOrEqual(off + 1e-9);
        }
      }),
    );
  });
});
