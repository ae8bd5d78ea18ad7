import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingPanelAt, latticeFrame } from '../../src/sheets/lattice-frame';
import { ceilingOf } from '../arbitraries/ceiling-fixture';

describe('latticeFrame', () => {
  it('counts columns towards -x and rows towards +y on an unturned ceiling', () => {
    const frame = latticeFrame(ceilingOf(2000, 0).table)!;
    expect(frame.columnX).toBeCloseTo(-1, 12);
    expect(frame.rowY).toBeCloseTo(1, 12);
    // Four columns of 500 mm about the origin: the outer corner of column 1, row 1 is at (1000, -1000).
    expect([frame.originXMm, frame.originYMm]).toEqual([1000, -1000]);
  });
  it('is null without panels', () => {
    const { table } = ceilingOf(2000, 0);
    expect(latticeFrame({ ...table, count: 0 })).toBeNull();
    expect(latticeFrame({ ...table, types: [] })).toBeNull();
  });
});

describe('ceilingPanelAt', () => {
  it('finds every panel at its centre, however the ceiling is turned and whichever way its heading is stated', () => {
    fc.assert(
      fc.property(fc.integer({ min: -180, max: 180 }), fc.constantFrom(0, 180), (turnDeg, other) => {
        const { table } = ceilingOf(3000, turnDeg);
        const turned = { ...table, headingDeg: table.headingDeg.map((heading) => heading + other) };
        const frame = latticeFrame(turned)!;
        for (let i = 0; i < table.count; i++) {
          expect(ceilingPanelAt(turned, frame, table.xMm[i]! + 3, table.yMm[i]! - 3)).toBe(i);
        }
      }),
    );
  });
  it('finds nothing where no panel is', () => {
    const { table } = ceilingOf(3000, 0);
    const frame = latticeFrame(table)!;
    // The corner of the lattice lies outside the circle.
    expect(ceilingPanelAt(table, frame, 1400, 1400)).toBe(-1);
    expect(ceilingPanelAt(table, frame, 99_000, 0)).toBe(-1);
  });
});
