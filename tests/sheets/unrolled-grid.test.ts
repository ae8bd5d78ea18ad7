import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnLeftMm, layOutUnrolled, panelUnder, rowTopMm } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { flatGrid } from './polylines';

describe('layOutUnrolled', () => {
  it('sees column 1 at the left from inside and at the right from behind', () => {
    const inside = flatGrid({});
    expect([1, 2, 3].map((column) => columnLeftMm(inside, inside.strips[0]!, column))).toEqual([0, 500, 1000]);
    const behind = flatGrid({}, 'behind');
    expect([1, 2, 3].map((column) => columnLeftMm(behind, behind.strips[0]!, column))).toEqual([1000, 500, 0]);
  });
  it('stacks rows of 500 mm upwards from the floor', () => {
    const grid = flatGrid({});
    const strip = grid.strips[0]!;
    expect(strip).toMatchObject({ topMm: 1000, footMm: 2000, zeroMm: 2000, widthMm: 1500 });
    expect([0, 1, 2].map((row) => rowTopMm(grid, strip, row))).toEqual([2000, 1500, 1000]);
  });
  it('keeps the floor below a wall that stands on something', () => {
    const strip = flatGrid({ baseMm: 600 }).strips[0]!;
    expect(strip).toMatchObject({ topMm: 1000, footMm: 2000, zeroMm: 2600 });
  });
  it('gives a row without a single panel the height of its type', () => {
    const grid = flatGrid({ rows: 4, hole: { column: 1, row: 2, columns: 3, rows: 1 } });
    expect([...grid.edgesMm]).toEqual([0, 500, 1000, 1500, 2000]);
    expect([...flatGrid({ rows: 3, hole: { column: 1, row: 1, columns: 3, rows: 1 } }).edgesMm]).toEqual([
      0, 500, 1000, 1500,
    ]);
  });
  it('lays strips one under the other with their clear spaces between', () => {
    const table = stageFixture({ columns: 4, rows: 2, jointDeg: 0 }).surfaces.surfaces[0]!;
    const strips = [
      { firstColumn: 1, columns: 3 },
      { firstColumn: 4, columns: 1 },
    ];
    const grid = layOutUnrolled(table, 'inside', strips, { aboveMm: 100, belowMm: 200 });
    // 100 above, 1000 high, 200 below, 100 above the next.
    expect(grid.strips.map((strip) => strip.topMm)).toEqual([100, 1400]);
    expect([...grid.stripOf].slice(1)).toEqual([0, 0, 0, 1]);
    expect(columnLeftMm(grid, grid.strips[1]!, 4)).toBe(0);
  });
});

describe('panelUnder', () => {
  it('finds the panel that the middle of its place shows, whatever the side, strips and holes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom('inside' as const, 'behind' as const),
        (columns, rows, cut, from) => {
          const hole = { column: 2, row: 1, columns: 1, rows: 2 };
          const table = stageFixture({ columns, rows, jointDeg: 2.5, hole }).surfaces.surfaces[0]!;
          const first = Math.min(cut, columns);
          const strips = [{ firstColumn: 1, columns: first }];
          if (first < columns) strips.push({ firstColumn: first + 1, columns: columns - first });
          const grid = layOutUnrolled(table, from, strips, { aboveMm: 700, belowMm: 900 });
          for (let column = 1; column <= columns; column++) {
            for (let row = 1; row <= rows; row++) {
              const strip = grid.strips[grid.stripOf[column]!]!;
              const x = columnLeftMm(grid, strip, column) + 250;
              const y = rowTopMm(grid, strip, row) + 250;
              expect(panelUnder(grid, x, y)).toBe(table.at[(column - 1) * rows + row - 1]);
            }
          }
        },
      ),
    );
  });
  it('finds nothing beside, above and between the strips', () => {
    const grid = flatGrid({});
    expect([
      panelUnder(grid, -1, 1200),
      panelUnder(grid, 1501, 1200),
      panelUnder(grid, 200, 999),
      panelUnder(grid, 200, 2001),
    ]).toEqual([-1, -1, -1, -1]);
  });
});
