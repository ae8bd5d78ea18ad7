import { describe, expect, it } from 'vitest';
import { ceilingAxes } from '../../../src/calc/ceilings/ceiling-axes';
import { fillCeilingTable } from '../../../src/calc/ceilings/fill-ceiling-table';
import { type LatticeCeiling, latticeCeiling } from '../../../src/calc/ceilings/lattice-ceiling';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainCeiling } from './plain-ceiling';

const shapes = new Map([['p1', plainPanel('p1')]]);
const fill = (more: Partial<Ceiling> = {}) => {
  const ceiling = plainCeiling(more);
  return fillCeilingTable(ceiling, latticeCeiling(ceiling, shapes, 100) as LatticeCeiling, ceilingAxes(ceiling.place));
};

describe('fillCeilingTable', () => {
  it('counts columns from the left as seen from below, so that column 1 has the greatest x', () => {
    const table = fill();
    expect([table.columns, table.rows, table.count]).toEqual([4, 3, 12]);
    expect(table.column[0]).toBe(1);
    expect(table.xMm[0]).toBe(750);
    expect(table.column[11]).toBe(4);
    expect(table.xMm[11]).toBe(-750);
  });

  it('counts rows from the bottom, the least y, and the canvas from the top left', () => {
    const table = fill();
    expect([...table.row.slice(0, 3)]).toEqual([1, 2, 3]);
    expect([...table.yMm.slice(0, 3)]).toEqual([-500, 0, 500]);
    expect([...table.canvasY.slice(0, 3)]).toEqual([400, 200, 0]);
    expect([...table.canvasX.slice(0, 4)]).toEqual([0, 0, 0, 200]);
    expect([table.canvasWidth, table.canvasHeight]).toEqual([800, 600]);
  });

  it('hangs the faces at trim and heads from left to right', () => {
    const table = fill({ place: { ...plainCeiling().place, turnDeg: 30 } });
    expect(new Set(table.zMm)).toEqual(new Set([6000]));
    expect(new Set(table.headingDeg)).toEqual(new Set([210]));
    // From column 1 to column 2 is one width along that heading.
    expect(table.xMm[3]! - table.xMm[0]!).toBeCloseTo(500 * Math.cos((210 * Math.PI) / 180), 9);
    expect(table.yMm[3]! - table.yMm[0]!).toBeCloseTo(500 * Math.sin((210 * Math.PI) / 180), 9);
  });

  it('has no panel in a hole', () => {
    const table = fill({ holes: [{ id: 'h', name: 'Hatch', xMm: 500, yMm: -250, widthMm: 500, depthMm: 500 }] });
    expect(table.count).toBe(11);
    expect([...table.at].indexOf(-1)).toBe(1);
    expect(table.row[1]).toBe(3);
  });
});
