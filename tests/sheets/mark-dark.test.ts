import { describe, expect, it } from 'vitest';
import { markDarkFromAbove, markDarkUnrolled } from '../../src/sheets/mark-dark';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';

// A flat wall of 4 columns and 3 rows of panels of 500 mm, numbers 0 to 11 by column and row from the floor, and a ceiling.
const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, ceilingDiameterMm: 2000 });
const table = parts.surfaces.surfaces[0]!;

describe('markDarkUnrolled', () => {
  const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 1, columns: 4 }], { aboveMm: 100, belowMm: 0 });

  it('shades and crosses each dark panel where it lies', () => {
    // Panel 4 is column 2, row 2: from 500 to 1000 across; the top row begins 100 down, so that row 2 is from 600 to 1100.
    const { fields, crosses } = markDarkUnrolled(grid, 0, [4]);
    expect([...fields.xyMm]).toEqual([500, 600, 1000, 600, 1000, 1100, 500, 1100]);
    expect(fields.closed).toBe(true);
    expect([...crosses.xyMm]).toEqual([500, 600, 1000, 1100, 500, 1100, 1000, 600]);
    expect([...crosses.ends]).toEqual([2, 4]);
  });

  it('leaves panels of other surfaces out', () => {
    expect(markDarkUnrolled(grid, 0, [12, 13]).fields.ends).toHaveLength(0);
    expect(markDarkUnrolled(grid, 5, [4]).crosses.ends).toHaveLength(0);
  });
});

describe('markDarkFromAbove', () => {
  it('draws a bar before a column, as long as the part of it that is dark', () => {
    // The wall stands on y = 0 with its back to +y, column 1 from x = -1000 to -500; down in the drawing is towards the audience.
    const whole = markDarkFromAbove(parts, [0, 1, 2]);
    expect([...whole.fields.xyMm]).toEqual([-1000, 0, -500, 0, -500, 900, -1000, 900]);
    expect([...whole.crosses.xyMm]).toEqual([-1000, 0, -500, 900, -500, 0, -1000, 900]);
    // 2 of 3 panels.
    const partly = markDarkFromAbove(parts, [0, 1]);
    expect([...partly.fields.xyMm]).toEqual([-1000, 0, -500, 0, -500, 600, -1000, 600]);
    expect([...partly.crosses.xyMm]).toEqual([-1000, 0, -500, 600]);
  });

  it('turns the bars with the wall, towards its middle', () => {
    // A ring of 36 columns: the middle of a front face is 250 / tan(5 deg) from the centre.
    const ring = stageFixture({ columns: 36, rows: 4, jointDeg: 10 });
    const [x1, y1, x2, y2, x3, y3] = markDarkFromAbove(ring, [40]).fields.xyMm;
    expect(Math.hypot(x3! - x2!, y3! - y2!)).toBeCloseTo(900 / 4, 1);
    const middle = Math.hypot((x1! + x2!) / 2, (y1! + y2!) / 2);
    expect(middle).toBeCloseTo(250 / Math.tan((5 * Math.PI) / 180), 1);
    expect(Math.hypot(x3!, y3!)).toBeLessThan(middle);
  });

  it('crosses columns that are dark from top to bottom and strikes the others once', () => {
    // Columns 1 and 3 whole, 2 in part.
    const { fields, crosses } = markDarkFromAbove(parts, [0, 1, 2, 4, 6, 7, 8]);
    expect(fields.ends).toHaveLength(3);
    expect(crosses.ends).toHaveLength(2 + 1 + 2);
  });

  it('crosses each dark panel of a ceiling, and nothing where nothing is dark', () => {
    expect(markDarkFromAbove(parts, [12, 13]).crosses.ends).toHaveLength(4);
    expect(markDarkFromAbove(parts, []).fields.ends).toHaveLength(0);
    expect(markDarkFromAbove(parts, [-1, 9999]).fields.ends).toHaveLength(0);
  });
});
