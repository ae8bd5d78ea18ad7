import { expect, it } from 'vitest';
import { drawTints } from '../../src/sheets/draw-tints';
import { noTint } from '../../src/sheets/tint-panels';
import { flatGrid, polylines } from './polylines';

it('drawTints makes one fill for each tint and one rectangle for panels of a column that share it', () => {
  // Two columns of three rows; tints by local index, column by column from the floor.
  const tints = [0, 0, 1, 0, 0, 0];
  const fills = drawTints(flatGrid({ columns: 2, rows: 3 }), (local) => tints[local]!);
  expect(fills.map((fill) => fill.paint).sort()).toEqual([0, 1]);
  const zero = polylines(fills.find((fill) => fill.paint === 0)!.lines);
  expect(zero).toHaveLength(2);
  // Rows 1 and 2 of column 1: from the foot at 2500 up by 1000.
  expect(zero[0]).toEqual([
    [0, 1500],
    [500, 1500],
    [500, 2500],
    [0, 2500],
  ]);
});

it('drawTints leaves out holes and panels without a tint', () => {
  const grid = flatGrid({ columns: 1, rows: 4, hole: { column: 1, row: 2, columns: 1, rows: 1 } });
  const fills = drawTints(grid, (local) => (local === 2 ? noTint : 3));
  expect(polylines(fills[0]!.lines).map((line) => line[0]![1])).toEqual([2500, 1500]);
});
