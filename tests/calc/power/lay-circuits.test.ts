import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layCircuits } from '../../../src/calc/power/lay-circuits';
import { panelCurrent } from '../../../src/calc/power/panel-current';
import type { SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import { powerPanel, surfaceOf, surfaceSetArbitrary } from '../../arbitraries/power-surfaces';

const circuit = { ratedA: 16, usableShare: 0.8 };
const panels = [powerPanel('p'), powerPanel('q', { fullWhiteW: 290 })];
const currentsOf = (table: SurfaceTable, volts: number) =>
  table.types.map((type) => panelCurrent(type.panelId, panels, circuit, volts));
const lay = (table: SurfaceTable, volts = 230) => layCircuits(table, currentsOf(table, volts)).simple;
const names = (table: SurfaceTable, chain: readonly number[]) => chain.map((p) => `${table.column[p]}.${table.row[p]}`);

describe('layCircuits', () => {
  it('a wall of 13 rows, 18 panels a circuit: one column a circuit, entry at the floor', () => {
    const table = surfaceOf({ columns: 5, rows: 13 });
    const chains = lay(table);
    expect(chains.map((c) => c.panels.length)).toEqual([13, 13, 13, 13, 13]);
    expect(names(table, chains[2]!.panels)[0]).toBe('3.1');
  });

  it('a low wall of 3 rows: equal blocks of 5 columns folded, not 6 and a rest', () => {
    expect(lay(surfaceOf({ columns: 20, rows: 3 })).map((c) => c.panels.length)).toEqual([15, 15, 15, 15]);
  });

  it('columns taller than a circuit: the row across below is ordered with the columns above it', () => {
    // 7 panels a circuit at 92 V: the lowest row seven wide, seven columns of 7 above it.
    const table = surfaceOf({ columns: 14, rows: 8 });
    const chains = lay(table, 92);
    expect(chains.every((c) => c.panels.length === 7)).toBe(true);
    expect(chains.slice(0, 9).map((c) => names(table, c.panels)[0])).toEqual([
      '1.1',
      '1.2',
      '2.2',
      '3.2',
      '4.2',
      '5.2',
      '6.2',
      '7.2',
      '8.1',
    ]);
  });

  it('mixed panels count by amperes: 6 of 150 W and 6 of 290 W, 2640 W of 2797 W a circuit', () => {
    const rowPanel = (r: number) => (r <= 6 ? 'p' : 'q');
    expect(lay(surfaceOf({ columns: 4, rows: 12, rowPanel })).map((c) => c.panels.length)).toEqual([12, 12, 12, 12]);
    expect(lay(surfaceOf({ columns: 4, rows: 13, rowPanel })).length).toBeGreaterThan(4);
  });

  it('a door breaks no chain and leaves no panel out', () => {
    const table = surfaceOf({ columns: 12, rows: 9, holds: (c, r) => c < 5 || c > 8 || r > 4 });
    const chains = lay(table);
    expect(chains.map((c) => c.panels.length).reduce((a, b) => a + b)).toBe(12 * 9 - 16);
    expect(chains.length).toBeLessThanOrEqual(6); // 92 panels, 18 a circuit: 6 is the least possible
  });

  it('joins what a hole left over: round a window of two columns of 9 and a sill and lintel of one panel, two circuits', () => {
    const chains = lay(surfaceOf({ columns: 3, rows: 9, holds: (c, r) => c !== 2 || r === 1 || r === 9 }));
    expect(chains.map((c) => c.panels.length)).toEqual([11, 9]);
  });

  it('a panel that no circuit carries stands alone', () => {
    const table = surfaceOf({ columns: 2, rows: 2, rowPanel: (r) => (r === 1 ? 'p' : 'q') });
    const chains = layCircuits(
      table,
      table.types.map((t) => panelCurrent(t.panelId, panels, { ratedA: 2, usableShare: 0.5 }, 230)),
    ).simple;
    expect(chains.filter((c) => c.panels.length === 1 && table.row[c.panels[0]!] === 2)).toHaveLength(2);
  });

  it('puts every panel on exactly one circuit, neighbours touch, entry low, no circuit above what it carries', () => {
    const order = fc.constantFrom('simple' as const, 'dense' as const);
    fc.assert(
      fc.property(surfaceSetArbitrary, order, fc.integer({ min: 60, max: 240 }), (set, first, volts) => {
        for (const table of set.surfaces) {
          const currents = currentsOf(table, volts);
          const ways = layCircuits(table, currents);
          const chains = first === 'simple' ? ways.simple : ways.dense();
          const all = chains.flatMap((c) => c.panels).sort((a, b) => a - b);
          expect(all).toEqual(Array.from({ length: table.count }, (_, i) => i));
          for (const { panels: chain, currentA, limitA } of chains) {
            const amps = chain.reduce((sum, p) => sum + currents[table.type[p]!]!.currentA, 0);
            expect(currentA).toBeCloseTo(amps, 9);
            if (chain.length > 1) expect(amps).toBeLessThanOrEqual(limitA * (1 + 1e-9));
            expect(table.row[chain[0]!]!).toBeLessThanOrEqual(table.row[chain.at(-1)!]!);
            chain.slice(1).forEach((p, i) => {
              const b = chain[i]!;
              expect(Math.abs(table.column[p]! - table.column[b]!) + Math.abs(table.row[p]! - table.row[b]!)).toBe(1);
            });
          }
        }
      }),
    );
  });

  it('joins what holes left over from the side that takes fewer circuits, whichever it is', () => {
    // Two panels a circuit at 30 V: 12.8 A usable, 150 W at power factor 0.95 are 5.26 A. Four in the lowest row and one apart: three.
    const holds = (column: number, row: number) => row === 1 || (column === 4 && row === 3);
    const mirrored = (column: number, row: number) => holds(5 - column, row);
    for (const each of [holds, mirrored]) {
      expect(lay(surfaceOf({ columns: 4, rows: 3, holds: each }), 30)).toHaveLength(3);
    }
  });

  it('a mirrored surface with holes takes as many circuits', () => {
    const size = { columns: fc.integer({ min: 1, max: 9 }), rows: fc.integer({ min: 1, max: 9 }) };
    const holed = fc.record({ ...size, standing: fc.array(fc.boolean(), { minLength: 81, maxLength: 81 }) });
    fc.assert(
      fc.property(holed, fc.integer({ min: 20, max: 240 }), ({ columns, rows, standing }, volts) => {
        const holds = (c: number, r: number) => standing[(c - 1) * 9 + r - 1]!;
        const one = lay(surfaceOf({ columns, rows, holds }), volts);
        const other = lay(surfaceOf({ columns, rows, holds: (c, r) => holds(columns + 1 - c, r) }), volts);
        expect(other).toHaveLength(one.length);
      }),
    );
  });
});
