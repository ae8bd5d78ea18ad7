import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceBlock } from '../../../src/calc/power/trace-block';
import { surfaceOf } from '../../arbitraries/power-surfaces';

const whole = (columns: number, rows: number) => ({ fromColumn: 0, toColumn: columns, fromRow: 0, toRow: rows });

describe('traceBlock', () => {
  it('walks a full block as one chain, up the first column and down the next', () => {
    const table = surfaceOf({ columns: 3, rows: 2 });
    const names = traceBlock(table, whole(3, 2)).map((chain) => chain.map((p) => `${table.column[p]}.${table.row[p]}`));
    expect(names).toEqual([['1.1', '1.2', '2.2', '2.1', '3.1', '3.2']]);
  });

  it('goes round a ragged top in one chain by starting on the higher column', () => {
    // Columns of 2 and 4: up the first one would leave the top of the second behind.
    const table = surfaceOf({ columns: 2, rows: 4, holds: (c, r) => c === 2 || r <= 2 });
    expect(traceBlock(table, whole(2, 4))).toHaveLength(1);
  });

  it('walks by rows where that keeps a chain whole: a column that begins and ends inside', () => {
    const table = surfaceOf({ columns: 3, rows: 4, holds: (c, r) => c < 3 || r === 2 || r === 3 });
    expect(traceBlock(table, whole(3, 4))).toHaveLength(1);
  });

  it('keeps to its block and leaves no panel out, whatever the holes', () => {
    const cells = fc.array(fc.boolean(), { minLength: 30, maxLength: 30 });
    fc.assert(
      fc.property(cells, (present) => {
        const table = surfaceOf({ columns: 6, rows: 5, holds: (c, r) => present[(c - 1) * 5 + r - 1]! });
        const chains = traceBlock(table, { fromColumn: 1, toColumn: 5, fromRow: 1, toRow: 5 });
        const inside = Array.from({ length: table.count }, (_, p) => p).filter(
          (p) => table.column[p]! >= 2 && table.column[p]! <= 5 && table.row[p]! >= 2,
        );
        expect(chains.flat().sort((a, b) => a - b)).toEqual(inside);
        for (const chain of chains) {
          chain.slice(1).forEach((panel, i) => {
            const before = chain[i]!;
            const apart =
              Math.abs(table.column[panel]! - table.column[before]!) + Math.abs(table.row[panel]! - table.row[before]!);
            expect(apart).toBe(1);
          });
        }
      }),
    );
  });
});
