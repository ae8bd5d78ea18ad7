import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { discOverlap, type Rectangle } from '../../../src/calc/ceilings/disc-overlap';

/** Area by slices: the chord of the disc within each, cut at the rectangle (Simpson's rule). */
function bySlices({ fromU, toU, fromV, toV }: Rectangle, radius: number): number {
  const slices = 4000;
  const height = (u: number) => {
    if (Math.abs(u) >= radius) return 0;
    const half = Math.sqrt(radius * radius - u * u);
    return Math.max(0, Math.min(toV, half) - Math.max(fromV, -half));
  };
  let sum = 0;
  for (let k = 0; k <= slices; k++) {
    const weight = k === 0 || k === slices ? 1 : k % 2 === 1 ? 4 : 2;
    sum += weight * height(fromU + ((toU - fromU) * k) / slices);
  }
  return (sum * (toU - fromU)) / slices / 3;
}

describe('discOverlap', () => {
  it('gives the whole disc, the whole rectangle or nothing where one holds the other or they are apart', () => {
    expect(discOverlap({ fromU: -2, toU: 2, fromV: -2, toV: 2 }, 1)).toBeCloseTo(Math.PI, 12);
    expect(discOverlap({ fromU: 0, toU: 0.5, fromV: 0, toV: 0.5 }, 1)).toBe(0.25);
    expect(discOverlap({ fromU: 1, toU: 2, fromV: 0, toV: 2 }, 1)).toBe(0);
  });

  it('gives a half, a quarter and a segment of the disc', () => {
    expect(discOverlap({ fromU: 0, toU: 2, fromV: -2, toV: 2 }, 1)).toBeCloseTo(Math.PI / 2, 12);
    expect(discOverlap({ fromU: 0, toU: 2, fromV: 0, toV: 2 }, 1)).toBeCloseTo(Math.PI / 4, 12);
    // Segment beyond half the radius: r^2 (pi/3 - sqrt 3 / 4); circular segment, any handbook of mathematics.
    expect(discOverlap({ fromU: 0.5, toU: 2, fromV: -2, toV: 2 }, 1)).toBeCloseTo(Math.PI / 3 - Math.sqrt(3) / 4, 12);
  });

  it('agrees with slices summed, for any rectangle', () => {
    const size = fc.double({ min: 0.01, max: 2, noNaN: true });
    const corner = fc.double({ min: -1.5, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(corner, corner, size, size, (fromU, fromV, width, height) => {
        const rectangle = { fromU, toU: fromU + width, fromV, toV: fromV + height };
        expect(Math.abs(discOverlap(rectangle, 1) - bySlices(rectangle, 1))).toBeLessThan(1e-4);
      }),
      { numRuns: 200 },
    );
  });
});
