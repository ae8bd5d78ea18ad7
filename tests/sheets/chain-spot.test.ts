import { expect, test } from 'vitest';
import { chainSpot } from '../../src/sheets/chain-spot';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { flatGrid } from './polylines';

test('chainSpot lies right of the middle of its panel, half way up', () => {
  // Column 2 begins at 500: 500 + 0.62 x 500 = 810. Top at 1000, two rows of 500: the middle of row 1 at 1750.
  const grid = flatGrid({});
  expect(chainSpot(grid, grid.table.at[2]!)).toEqual({ x: 810, y: 1750, strip: 0 });
});

test('chainSpot of a panel that is not shown is null, be it in another column or another row', () => {
  const table = stageFixture({ columns: 4, rows: 3, jointDeg: 0 }).surfaces.surfaces[0]!;
  const space = { aboveMm: 0, belowMm: 0 };
  const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 2, columns: 2 }], space, { firstRow: 2, rows: 1 });
  const shown = Array.from({ length: table.count }, (_, local) => chainSpot(grid, local)).flatMap((spot, local) =>
    spot === null ? [] : [`C${table.column[local]} R${table.row[local]}`],
  );
  expect(shown).toEqual(['C2 R2', 'C3 R2']);
});
