import { describe, expect, it } from 'vitest';
import { nameWidthPx, showsReach, surfaceLabels } from '../../src/sheets/surface-labels';
import { flatGrid } from './polylines';

const format = (mm: number) => `${mm / 1000} m`;

describe('surfaceLabels', () => {
  it('names columns over their middles, mirrored from behind', () => {
    const at = (from: 'inside' | 'behind') => surfaceLabels(flatGrid({}, from), 'bottom', 2100, format)[1]!.at(0);
    expect(at('inside')).toMatchObject({ text: 'C1', short: '1', xMm: 250, yMm: 1000 });
    expect(at('behind')).toMatchObject({ text: 'C1', xMm: 1250 });
  });
  it('names rows at the left, from the floor', () => {
    const rows = surfaceLabels(flatGrid({}), 'bottom', 2100, format)[2]!;
    expect([rows.at(0), rows.at(1)]).toMatchObject([
      { text: 'R1', yMm: 1750 },
      { text: 'R2', yMm: 1250 },
    ]);
    expect(rows.numberOf!(1)).toBe(2);
  });
  it('names rows at the right where cables come from the left', () => {
    expect(surfaceLabels(flatGrid({}), 'bottom', 2100, format)[2]!.at(0)).toMatchObject({ xMm: 0, asideX: -1 });
    // Three columns of 500.
    expect(surfaceLabels(flatGrid({}), 'left', 2100, format)[2]!.at(0)).toMatchObject({ xMm: 1500, asideX: 1 });
  });
  it('says the reach where the wall is higher than it', () => {
    const high = surfaceLabels(flatGrid({ rows: 6 }), 'bottom', 2100, format)[0]!;
    expect(high.count).toBe(1);
    // The floor lies at 4000.
    expect(high.at(0)).toMatchObject({ text: 'reach 2.1 m', yMm: 1900 });
    expect(surfaceLabels(flatGrid({ rows: 2 }), 'bottom', 2100, format)[0]!.count).toBe(0);
  });
  it('names every panel, from the scale at which the longest name fits in its width', () => {
    const names = surfaceLabels(flatGrid({ columns: 12, rows: 10 }), 'bottom', 2100, format)[3]!;
    expect(names.at(names.count - 1).text).toBe('C12 R10');
    // 'C12 R10' has 7 signs of 0.6 x 10 px = 42 px in 500 mm.
    expect(names.leastScale).toBeGreaterThan(42 / 500);
    expect(names.leastScale).toBeLessThan(60 / 500);
    expect(nameWidthPx({ columns: 12, rows: 10 })).toBeCloseTo(names.leastScale * 500, 9);
  });
  it('shows the reach between the floor and the top of what is drawn of a wall', () => {
    const shows = (reachMm: number) => {
      const grid = flatGrid({ rows: 2, baseMm: 200 });
      return showsReach(grid, grid.strips[0]!, reachMm);
    };
    // From the floor at 0 to 200 + 2 x 500 = 1200.
    expect([shows(0), shows(1199), shows(1201)]).toEqual([true, true, false]);
  });
});
