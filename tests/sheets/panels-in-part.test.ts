import fc from 'fast-check';
import { expect, it } from 'vitest';
import { panelsInPart } from '../../src/sheets/panels-in-part';
import { columnLeftMm, layOutUnrolled, rowTopMm } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';

it('panelsInPart finds just the panels whose places a part of the drawing meets', () => {
  const edge = fc.integer({ min: -1000, max: 6000 });
  fc.assert(
    fc.property(edge, edge, edge, edge, fc.constantFrom('inside' as const, 'behind' as const), (a, b, c, d, from) => {
      const part = { leftMm: Math.min(a, b), rightMm: Math.max(a, b), topMm: Math.min(c, d), bottomMm: Math.max(c, d) };
      const table = stageFixture({ columns: 7, rows: 4, jointDeg: 0 }).surfaces.surfaces[0]!;
      const strips = [
        { firstColumn: 1, columns: 5 },
        { firstColumn: 6, columns: 2 },
      ];
      const grid = layOutUnrolled(table, from, strips, { aboveMm: 300, belowMm: 300 });
      const expected = Array.from({ length: table.count }, (_, local) => local).filter((local) => {
        const strip = grid.strips[grid.stripOf[table.column[local]!]!]!;
        const left = columnLeftMm(grid, strip, table.column[local]!);
        const top = rowTopMm(grid, strip, table.row[local]!);
        return left <= part.rightMm && left + 500 > part.leftMm && top <= part.bottomMm && top + 500 >= part.topMm;
      });
      expect([...panelsInPart(grid, part)].sort((x, y) => x - y)).toEqual(expected);
    }),
  );
});
