import { describe, expect, it } from 'vitest';
import { ceilingAxes } from '../../../src/calc/ceilings/ceiling-axes';
import { outlineInPlan } from '../../../src/calc/ceilings/outline-in-plan';
import { plainCeiling } from './plain-ceiling';

const axes = ceilingAxes({ ...plainCeiling().place, xMm: 100, yMm: 200 });

describe('outlineInPlan', () => {
  it('gives the corners of a rectangle about its place', () => {
    expect(outlineInPlan({ kind: 'rectangle', widthMm: 1000, depthMm: 600 }, axes)).toEqual([
      { xMm: -400, yMm: -100 },
      { xMm: 600, yMm: -100 },
      { xMm: 600, yMm: 500 },
      { xMm: -400, yMm: 500 },
    ]);
  });

  it('gives 72 points on a circle', () => {
    const points = outlineInPlan({ kind: 'circle', diameterMm: 1000 }, axes);
    expect(points).toHaveLength(72);
    for (const { xMm, yMm } of points) expect(Math.hypot(xMm - 100, yMm - 200)).toBeCloseTo(500, 9);
  });

  it('moves the points of a polygon as they stand', () => {
    const points = [
      { xMm: 0, yMm: 0 },
      { xMm: 10, yMm: 0 },
      { xMm: 0, yMm: 10 },
    ];
    expect(outlineInPlan({ kind: 'polygon', points }, axes)).toEqual([
      { xMm: 100, yMm: 200 },
      { xMm: 110, yMm: 200 },
      { xMm: 100, yMm: 210 },
    ]);
  });
});
