import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowLoads } from '../../../src/calc/power/row-loads';
import { surfaceCurrents } from '../../../src/calc/power/surface-currents';
import { powerOf, powerPanel, type SurfaceShape, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

// p draws 1 A, q 2 A; a circuit carries 12.8 A, with q 5 A.
const panels = [
  powerPanel('p', { fullWhiteW: 230, powerFactor: 1 }),
  powerPanel('q', { fullWhiteW: 460, powerFactor: 1, chainA: 5 }),
];
const loads = (shape: SurfaceShape) => {
  const table = surfaceOf(shape);
  return rowLoads(table, surfaceCurrents({ power: powerOf(), panels, surfaces: surfaceSet(table) })[0]!);
};
const byBands = (row: number) => (row > 3 ? 'q' : 'p');

describe('rowLoads', () => {
  it('gives amperes and limit of every row by its band; an empty row draws nothing', () => {
    const { currentA, limitA } = loads({ columns: 2, rows: 5, rowPanel: byBands, holds: (_, r) => r !== 1 });
    expect([...currentA].map((a) => Math.round(a * 1e9) / 1e9)).toEqual([0, 1, 1, 2, 2]);
    expect([...limitA]).toEqual([Number.POSITIVE_INFINITY, 12.8, 12.8, 5, 5]);
  });

  it('counts circuits of whole columns side by side: 10 columns of 3 A, 4 to a circuit of 12.8 A', () => {
    const { circuits } = loads({ columns: 10, rows: 5, rowPanel: byBands });
    expect(circuits(0, 3, 12.8)).toBe(3);
    expect(circuits(3, 5, 5)).toBe(10);
    expect(circuits(0, 1, 0.5)).toBe(10); // above the limit: one each
  });

  it('counts columns with holes by what they draw, and empty ones not at all', () => {
    const { circuits } = loads({
      columns: 6,
      rows: 4,
      rowPanel: () => 'p',
      holds: (c, r) => c !== 2 && (c > 3 || r < 3),
    });
    expect(circuits(0, 4, 8)).toBe(2); // 2 0 2 4 | 4 4
    expect(circuits(2, 4, 12)).toBe(1);
  });

  it('counts a surface without holes as it counts one by columns', () => {
    const size = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 40 }), (columns, rows, limit) => {
        const alike = loads({ columns, rows, rowPanel: byBands }).circuits(0, rows, limit);
        // One more column without panels takes the way by columns.
        const byColumns = loads({ columns: columns + 1, rows, rowPanel: byBands, holds: (c) => c <= columns });
        expect(alike).toBe(byColumns.circuits(0, rows, limit));
      }),
    );
  });
});
