import { describe, expect, it } from 'vitest';
import { ceilingAxes } from '../../../src/calc/ceilings/ceiling-axes';
import { plainCeiling } from './plain-ceiling';

const place = plainCeiling().place;

describe('ceilingAxes', () => {
  it('mirrors x as seen from below and keeps +y up', () => {
    expect(ceilingAxes({ ...place, xMm: 100, yMm: 50 }).toPlan(30, 7)).toEqual({ xMm: 70, yMm: 57 });
  });

  it('turns about its place, anticlockwise in plan', () => {
    // u = -1000 is its own x = 1000; a quarter turn takes that to +y.
    const { xMm, yMm } = ceilingAxes({ ...place, xMm: 100, yMm: 50, turnDeg: 90 }).toPlan(-1000, 0);
    expect(xMm).toBeCloseTo(100, 9);
    expect(yMm).toBeCloseTo(1050, 9);
  });

  it('finds its way back', () => {
    const axes = ceilingAxes({ ...place, xMm: -300, yMm: 1200, turnDeg: 33 });
    const { xMm, yMm } = axes.toPlan(421, -77);
    expect(axes.fromPlan(xMm, yMm)[0]).toBeCloseTo(421, 9);
    expect(axes.fromPlan(xMm, yMm)[1]).toBeCloseTo(-77, 9);
  });
});
