import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipToPolygon } from '../../../src/calc/ceilings/clip-to-polygon';

const lattice = { startU: 0, startV: 0, stepU: 10, stepV: 10 };
type Points = readonly (readonly [number, number])[];
const window = { firstI: -3, firstJ: -3, columns: 6, rows: 6 };
const clip = (points: Points, rule: 'whole' | 'centre' | 'any') => clipToPolygon(points, rule, lattice, window);
const drawn = (kept: Uint8Array) =>
  Array.from({ length: 6 }, (_, fromTop) =>
    Array.from({ length: 6 }, (__, i) => (kept[i * 6 + 5 - fromTop] === 1 ? '#' : '.')).join(''),
  );

/** Even-odd by counting edges on the left of a point that lies on no edge. */
function isInside(points: Points, u: number, v: number): boolean {
  let odd = false;
  points.forEach(([aU, aV], i) => {
    const [bU, bV] = points[(i + 1) % points.length]!;
    if (aV > v !== bV > v && u > aU + ((v - aV) / (bV - aV)) * (bU - aU)) odd = !odd;
  });
  return odd;
}

describe('clipToPolygon', () => {
  it('keeps the same places of a square on the lattice under every rule', () => {
    const square: Points = [
      [-20, -10],
      [20, -10],
      [20, 20],
      [-20, 20],
    ];
    const picture = ['......', '.####.', '.####.', '.####.', '......', '......'];
    for (const rule of ['whole', 'centre', 'any'] as const) expect(drawn(clip(square, rule))).toEqual(picture);
  });

  it('tells whole, centre and any part apart along a slope', () => {
    const triangle: Points = [
      [-30, -30],
      [30, -30],
      [-30, 30],
    ];
    expect(drawn(clip(triangle, 'whole'))).toEqual(['......', '#.....', '##....', '###...', '####..', '#####.']);
    // The slope runs through the centres of the diagonal: on the edge counts as inside.
    expect(drawn(clip(triangle, 'centre'))).toEqual(['#.....', '##....', '###...', '####..', '#####.', '######']);
    expect(drawn(clip(triangle, 'any'))).toEqual(['#.....', '##....', '###...', '####..', '#####.', '######']);
  });

  it('leaves the inner corner of an L out', () => {
    const ell: Points = [
      [-30, -30],
      [30, -30],
      [30, -10],
      [-10, -10],
      [-10, 30],
      [-30, 30],
    ];
    expect(drawn(clip(ell, 'whole'))).toEqual(['##....', '##....', '##....', '##....', '######', '######']);
  });

  it('counts a centre on a level edge and on a corner as inside', () => {
    const level: Points = [
      [-25, -15],
      [25, -15],
      [25, 5],
      [5, 25],
      [-25, 5],
    ];
    expect(drawn(clip(level, 'centre'))[4]).toBe('######');
    // The topmost corner 5, 25 is the centre of place (0, 2).
    expect(drawn(clip(level, 'centre'))[0]).toBe('...#..');
  });

  it('agrees with points sampled inside each place, for any polygon', () => {
    const coordinate = fc.integer({ min: -30, max: 30 });
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 7 }), (points) => {
        const whole = clip(points, 'whole');
        const centre = clip(points, 'centre');
        const any = clip(points, 'any');
        for (let i = 0; i < 6; i++) {
          for (let j = 0; j < 6; j++) {
            // Samples at odd fractions lie on no edge between whole points, bar a few that no test hangs on.
            const samples = [0.131, 0.377, 0.617, 0.893].flatMap((s) =>
              [0.113, 0.397, 0.641, 0.871].map((t) => isInside(points, (i - 3 + s) * 10, (j - 3 + t) * 10)),
            );
            const at = i * 6 + j;
            if (whole[at] === 1) expect(samples.every(Boolean), `whole ${i} ${j}`).toBe(true);
            if (samples.some(Boolean)) expect(any[at], `any ${i} ${j}`).toBe(1);
            if (whole[at] === 1) expect(centre[at], `centre ${i} ${j}`).toBe(1);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('mirrors what it keeps when the polygon is mirrored', () => {
    const coordinate = fc.integer({ min: -30, max: 30 });
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 7 }), (points) => {
        const mirrored = points.map(([u, v]) => [-u, v] as const);
        for (const rule of ['whole', 'centre', 'any'] as const) {
          expect(drawn(clip(mirrored, rule)).map((row) => [...row].reverse().join(''))).toEqual(
            drawn(clip(points, rule)),
          );
        }
      }),
      { numRuns: 300 },
    );
  });
});
