import { describe, expect, it } from 'vitest';
import { findOpening } from '../../src/sheets/find-opening';
import { stageFixture } from '../arbitraries/evaluation-fixture';

describe('findOpening', () => {
  it('finds the gap of an untouched ring at the foot of the plan, looking down', () => {
    // 136 of 144 columns at 2.5 degrees: eight are left out. R = 500 / (2 sin 1.25 deg) = 11460.4 over corners, the chord
    // 2 R sin(8 x 1.25 deg) = 3980.2. Source: regular polygon, any handbook of mathematics.
    const opening = findOpening(stageFixture({ columns: 136, rows: 1, jointDeg: 2.5 }).walls)!;
    expect(opening.widthMm).toBeCloseTo(3980.2, 0);
    expect(opening.outX).toBeCloseTo(0, 9);
    expect(opening.outY).toBeCloseTo(-1, 9);
    expect(opening.middle.xMm).toBeCloseTo(0, 6);
    // The last column stands at the right, as the walk goes clockwise from the left.
    expect(opening.from.xMm).toBeGreaterThan(0);
    expect(opening.to.xMm).toBeLessThan(0);
  });
  it('takes the widest, and none where there is no gap', () => {
    const narrow = stageFixture({ columns: 140, rows: 1, jointDeg: 2.5 }).walls[0]!;
    const wide = stageFixture({ columns: 130, rows: 1, jointDeg: 2.5 }).walls[0]!;
    expect(findOpening([narrow, wide])?.wall).toBe(wide);
    expect(findOpening([{ ...wide, openingMm: 20 }])).toBeNull();
    expect(findOpening(stageFixture({ columns: 9, rows: 1, jointDeg: 0 }).walls)).toBeNull();
    expect(findOpening([])).toBeNull();
  });
});
