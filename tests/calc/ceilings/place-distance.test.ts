import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestPoints } from '../../../src/calc/ceilings/nearest-points';
import { placeDistance } from '../../../src/calc/ceilings/place-distance';

const place = { fromU: 0, toU: 10, fromV: 0, toV: 10 };

describe('placeDistance', () => {
  it('measures from a side, from a corner and from the end of an edge', () => {
    expect(placeDistance(-5, 15, 15, 15, place)).toBe(5);
    // 3-4-5 from the corner 10, 10.
    expect(placeDistance(13, 14, 20, 14, place)).toBe(5);
    // The line u + v = 24 passes the corner 10, 10 at sqrt 8.
    expect(placeDistance(4, 20, 20, 4, place)).toBeCloseTo(Math.sqrt(8), 12);
    expect(placeDistance(13, 5, 13, 5, place)).toBe(3);
  });

  it('gives 0 where they cross, touch or one holds the other', () => {
    expect(placeDistance(-5, 5, 15, 5, place)).toBe(0);
    expect(placeDistance(10, -5, 10, 15, place)).toBe(0);
    expect(placeDistance(4, 4, 6, 6, place)).toBe(0);
  });

  it('is the distance between the nearest points, which are found another way', () => {
    const coordinate = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (aU, aV, bU, bV) => {
        const { distance } = nearestPoints(aU, aV, bU, bV, place);
        expect(placeDistance(aU, aV, bU, bV, place)).toBeCloseTo(distance, 9);
      }),
    );
  });
});
