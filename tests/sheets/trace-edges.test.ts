import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceEdges } from '../../src/sheets/trace-edges';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { flatGrid, lengthOf, polylines } from './polylines';

const rim = (a: number, b: number) => a < 0 !== b < 0;
const between = (a: number, b: number) => a >= 0 && b >= 0;

describe('traceEdges', () => {
  it('draws the rim of a whole wall as four lines', () => {
    const lines = traceEdges(flatGrid({}), rim).build();
    expect(polylines(lines)).toHaveLength(4);
    // 1500 wide, 1000 high.
    expect(lengthOf(lines)).toBe(5000);
  });
  it('draws the edges between panels as lines as long as they go', () => {
    const lines = traceEdges(flatGrid({}), between).build();
    // Two uprights of 1000, one level line of 1500.
    expect(polylines(lines)).toHaveLength(3);
    expect(lengthOf(lines)).toBe(3500);
  });
  it('goes round a hole', () => {
    const grid = flatGrid({ columns: 5, rows: 5, hole: { column: 3, row: 3, columns: 1, rows: 1 } });
    expect(lengthOf(traceEdges(grid, rim).build())).toBe(4 * 2500 + 4 * 500);
  });
  it('mirrors left and right from behind and nothing else', () => {
    const hole = { column: 1, row: 1, columns: 1, rows: 1 };
    const inside = polylines(traceEdges(flatGrid({ hole }), rim).build());
    const behind = polylines(traceEdges(flatGrid({ hole }, 'behind'), rim).build());
    const key = (line: number[][]) => JSON.stringify([...line].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]!));
    const mirrored = inside.map((line) => line.map(([x, y]) => [1500 - x!, y!]));
    expect(behind.map(key).sort()).toEqual(mirrored.map(key).sort());
  });
  it('counts each edge once in one strip, and both sides of each cut in several: 500 mm an edge', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 1, max: 5 }), (columns, rows) => {
        const table = stageFixture({ columns, rows, jointDeg: 0 }).surfaces.surfaces[0]!;
        const one = layOutUnrolled(table, 'behind', [{ firstColumn: 1, columns }], { aboveMm: 0, belowMm: 0 });
        const edges = (columns - 1) * rows + columns * (rows - 1);
        expect(lengthOf(traceEdges(one, between).build())).toBe(edges * 500);
        const cut = [
          { firstColumn: 2, columns: columns - 1 },
          { firstColumn: 1, columns: 1 },
        ];
        const two = layOutUnrolled(table, 'behind', cut, { aboveMm: 10, belowMm: 10 });
        expect(lengthOf(traceEdges(two, between).build())).toBe((edges + rows) * 500);
      }),
    );
  });
});
