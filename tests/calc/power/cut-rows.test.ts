import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutRows, type RowLoads } from '../../../src/calc/power/cut-rows';

/** Rows without holes: w whole columns side by side on each circuit. */
const rowsOf = (columns: number, currentA: number[], limitA: number[]): RowLoads => ({
  currentA: Float64Array.from(currentA),
  limitA: Float64Array.from(limitA),
  circuits: (from, to, limit) => {
    const amps = currentA.slice(from, to).reduce((a, b) => a + b);
    return Math.ceil(columns / Math.max(1, Math.floor(limit / amps)));
  },
});
const alike = (columns: number, rows: number, limitA: number) =>
  rowsOf(columns, new Array<number>(rows).fill(1), new Array<number>(rows).fill(limitA));

describe('cutRows', () => {
  it('leaves a column whole where it fits on a circuit', () => {
    expect(cutRows(alike(136, 13, 18), 'levels')).toEqual([0]);
  });

  it('13 rows, 12 to a circuit: the lowest row across, whole columns of 12 above it', () => {
    // By hand, 136 columns: 12 + 1 rows make 136 + 12 circuits, 7 + 6 rows make 136 + 68.
    expect(cutRows(alike(136, 13, 12), 'levels')).toEqual([0, 1]);
  });

  it('26 rows, 13 to a circuit: two equal levels', () => {
    expect(cutRows(alike(40, 26, 13), 'levels')).toEqual([0, 13]);
  });

  it('counts the circuits that there are: with 2 columns even levels cost no more', () => {
    // By hand: 12 + 1 rows make 2 + 1 circuits; 7 + 6 rows make 2 + 1; the more even cut wins, the shorter level below.
    expect(cutRows(alike(2, 13, 12), 'levels')).toEqual([0, 6]);
  });

  it("'circuits' first cuts 10 rows of 18 a circuit into 1 and 9: two columns of 9 a circuit, the lowest row 18 wide", () => {
    // By hand, 136 columns: whole columns make 136 circuits, 9 + 1 rows 68 + 8.
    expect(cutRows(alike(136, 10, 18), 'circuits')).toEqual([0, 1]);
    expect(cutRows(alike(136, 10, 18), 'levels')).toEqual([0]);
  });

  it('adds mixed rows by amperes, not by count', () => {
    const rows = rowsOf(50, [2, 2, 2, 1, 1, 1], [6, 6, 6, 6, 6, 6]);
    expect(cutRows(rows, 'levels')).toEqual([0, 3]); // 6 A below; 3 A above, two columns wide
  });

  it('keeps to the least limit of a level', () => {
    const rows = rowsOf(10, [1, 1, 1, 1], [2, 2, 4, 4]);
    expect(cutRows(rows, 'levels')).toEqual([0, 2]);
  });

  it('gives a row that no circuit carries a level of its own, and nothing fails on none', () => {
    expect(cutRows(rowsOf(3, [1, 9, 1], [4, 4, 4]), 'levels')).toEqual([0, 1, 2]);
    expect(cutRows(alike(3, 0, 4), 'levels')).toEqual([0]);
  });

  it('never puts more on a level than a circuit carries, and takes the fewest levels', () => {
    const limits = fc.record({ rows: fc.integer({ min: 1, max: 40 }), most: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(limits, fc.integer({ min: 1, max: 60 }), ({ rows, most }, columns) => {
        const starts = cutRows(alike(columns, rows, most), 'levels');
        const heights = starts.map((from, i) => (starts[i + 1] ?? rows) - from);
        expect(Math.max(...heights)).toBeLessThanOrEqual(most);
        expect(starts.length).toBe(Math.ceil(rows / most));
      }),
    );
  });
});
