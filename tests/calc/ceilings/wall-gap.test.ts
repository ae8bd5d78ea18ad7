import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingAxes } from '../../../src/calc/ceilings/ceiling-axes';
import { type LatticeCeiling, latticeCeiling } from '../../../src/calc/ceilings/lattice-ceiling';
import { placeDistance } from '../../../src/calc/ceilings/place-distance';
import { wallGap } from '../../../src/calc/ceilings/wall-gap';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';
import { plainCeiling } from './plain-ceiling';

const shapes = new Map([['p1', plainPanel('p1')]]);
function gap(ceiling: Ceiling, wall: ReturnType<typeof plainWall>) {
  const { clipped, lattice } = latticeCeiling(ceiling, shapes, 250_000) as LatticeCeiling;
  const { frontMm } = layOutWalls([wall], [plainPanel('p1')]).walls[0]!;
  return wallGap(clipped, lattice, ceilingAxes(ceiling.place), frontMm);
}

describe('wallGap', () => {
  it('measures from a flat wall to the panels in front of it', () => {
    // Ceiling 2000 x 1500 about 0, 0: its far edge at y = 750. The wall's face at y = 1000, x from -1500 to 1500.
    const found = gap(plainCeiling(), plainWall(6, 0, 1, { place: { xMm: 0, yMm: 1000, turnDeg: 0 } }))!;
    expect(found.least.distance).toBeCloseTo(250, 9);
    // The outer columns begin at x = 1000, right over the corner: the same gap.
    expect(found.greatest.distance).toBeCloseTo(250, 9);
    const wider = gap(plainCeiling(), plainWall(10, 0, 1, { place: { xMm: 0, yMm: 1000, turnDeg: 0 } }))!;
    // The outermost column reaches from x = 2000 to 2500: 1000 across and 250 along from the corner.
    expect(wider.greatest.distance).toBeCloseTo(Math.hypot(1000, 250), 9);
    expect([0, 9]).toContain(wider.greatest.column);
  });

  it('is nought where the wall runs through or under the panels', () => {
    expect(gap(plainCeiling(), plainWall(6, 0))!.least.distance).toBe(0);
    // All of a short wall under the middle of a wide ceiling, far from its edge panels.
    const wide = plainCeiling({ outline: { kind: 'rectangle', widthMm: 10_000, depthMm: 9500 } });
    expect(gap(wide, plainWall(2, 0))!.greatest.distance).toBe(0);
  });

  it('is alike all round for a ceiling that is turned with the wall', () => {
    for (const turnDeg of [0, 25, 90, -140]) {
      const place = { ...plainCeiling().place, turnDeg };
      const away = (turnDeg + 90) * (Math.PI / 180);
      const wall = plainWall(4, 0, 1, { place: { xMm: 950 * Math.cos(away), yMm: 950 * Math.sin(away), turnDeg } });
      expect(gap(plainCeiling({ place }), wall)!.least.distance).toBeCloseTo(200, 6);
    }
  });

  it('finds what looking at every panel finds', () => {
    const radius = fc.integer({ min: 1000, max: 9000 });
    const offset = fc.integer({ min: -4000, max: 4000 });
    const joint = fc.constantFrom(0, 2.5, 5, 10, -5);
    fc.assert(
      fc.property(radius, offset, offset, joint, fc.integer({ min: 1, max: 30 }), (r, x, y, jointDeg, columns) => {
        const ceiling = plainCeiling({ outline: { kind: 'circle', diameterMm: 2 * r }, rule: 'any' });
        const laid = latticeCeiling(ceiling, shapes, 250_000) as LatticeCeiling;
        const axes = ceilingAxes(ceiling.place);
        const { frontMm } = layOutWalls(
          [plainWall(columns, jointDeg, 1, { place: { xMm: x, yMm: y, turnDeg: 17 } })],
          [plainPanel('p1')],
        ).walls[0]!;
        const { firstI, firstJ, rows, kept } = laid.clipped;
        const nearest = Array.from({ length: columns }, (_, c) => {
          const a = axes.fromPlan(frontMm[c * 4]!, frontMm[c * 4 + 1]!);
          const b = axes.fromPlan(frontMm[c * 4 + 2]!, frontMm[c * 4 + 3]!);
          let least = Number.POSITIVE_INFINITY;
          kept.forEach((one, place) => {
            if (one === 0) return;
            const i = firstI + (place - (place % rows)) / rows;
            const j = firstJ + (place % rows);
            const fromU = i * 500;
            const fromV = j * 500 - 250;
            const panel = { fromU, toU: fromU + 500, fromV, toV: fromV + 500 };
            least = Math.min(least, placeDistance(a[0], a[1], b[0], b[1], panel));
          });
          return least;
        });
        const found = gap(ceiling, plainWall(columns, jointDeg, 1, { place: { xMm: x, yMm: y, turnDeg: 17 } }))!;
        expect(found.least.distance).toBeCloseTo(Math.min(...nearest), 6);
        expect(found.greatest.distance).toBeCloseTo(Math.max(...nearest), 6);
      }),
      { numRuns: 40 },
    );
  });
});
