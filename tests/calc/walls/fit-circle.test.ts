import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitCircle } from '../../../src/calc/walls/fit-circle';

const onCircle = (x: number, y: number, radius: number, degreesOf: readonly number[], off: readonly number[] = []) =>
  Float64Array.from(
    degreesOf.flatMap((deg, i) => {
      const far = radius + (off[i] ?? 0);
      return [x + far * Math.cos((deg * Math.PI) / 180), y + far * Math.sin((deg * Math.PI) / 180)];
    }),
  );

describe('fitCircle', () => {
  it('finds the circle that points lie on, far from the origin and with a short arc', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1000, max: 50_000, noNaN: true }),
        fc.integer({ min: 20, max: 360 }),
        (x, radius, arc) => {
          const fitted = fitCircle(
            onCircle(
              x,
              -x / 2,
              radius,
              [0, 0.2, 0.5, 0.9, 1].map((t) => t * arc * 0.99),
            ),
          )!;
          expect(fitted.xMm).toBeCloseTo(x, 2);
          expect(fitted.yMm).toBeCloseTo(-x / 2, 2);
          expect(fitted.radiusMm).toBeCloseTo(radius, 2);
        },
      ),
    );
  });

  it('leaves as much outside as inside where four points stray alike', () => {
    // By symmetry: centre 0, 0 and the mean of the radii 990, 1010, 990, 1010.
    const fitted = fitCircle(onCircle(0, 0, 1000, [0, 90, 180, 270], [-10, 10, -10, 10]))!;
    expect(fitted.xMm).toBeCloseTo(0, 9);
    expect(fitted.yMm).toBeCloseTo(0, 9);
    expect(fitted.radiusMm).toBeCloseTo(1000, 9);
  });

  it('minimises the true distances: no small move of centre or radius makes their squares less', () => {
    const points = onCircle(300, -200, 5000, [0, 15, 40, 62, 80, 100], [12, -30, 25, -8, 3, -17]);
    const cost = (x: number, y: number, radius: number) => {
      let sum = 0;
      for (let i = 0; i < points.length; i += 2) sum += (Math.hypot(points[i]! - x, points[i + 1]! - y) - radius) ** 2;
      return sum;
    };
    const { xMm, yMm, radiusMm } = fitCircle(points)!;
    const least = cost(xMm, yMm, radiusMm);
    for (const [dx, dy, dr] of [
      [0.1, 0, 0],
      [-0.1, 0, 0],
      [0, 0.1, 0],
      [0, -0.1, 0],
      [0, 0, 0.1],
      [0, 0, -0.1],
    ] as const) {
      expect(cost(xMm + dx, yMm + dy, radiusMm + dr)).toBeGreaterThan(least);
    }
  });

  it('gives null for fewer than three points, for points on a line and for points in one place', () => {
    expect(fitCircle(Float64Array.of(0, 0, 1, 1))).toBeNull();
    expect(fitCircle(Float64Array.of(0, 0, 1, 1, 2, 2, 3, 3))).toBeNull();
    expect(fitCircle(Float64Array.of(5, 5, 5, 5, 5, 5))).toBeNull();
    expect(fitCircle(new Float64Array(0))).toBeNull();
  });
});
