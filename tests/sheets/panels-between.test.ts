import { expect, test } from 'vitest';
import { panelsBetween } from '../../src/sheets/panels-between';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const hole = { column: 3, row: 2, columns: 1, rows: 1 };
const table = stageFixture({ columns: 6, rows: 4, jointDeg: 0, hole }).surfaces.surfaces[0]!;
const at = (column: number, row: number) => table.at[(column - 1) * table.rows + row - 1]!;
const names = (one: number, other: number) =>
  panelsBetween(table, one, other).map((local) => `C${table.column[local]} R${table.row[local]}`);

test('panelsBetween: the rectangle that has both in its corners, whichever was first, without the hole', () => {
  const rectangle = ['C2 R1', 'C2 R2', 'C2 R3', 'C3 R1', 'C3 R3', 'C4 R1', 'C4 R2', 'C4 R3'];
  expect(names(at(2, 1), at(4, 3))).toEqual(rectangle);
  expect(names(at(4, 1), at(2, 3))).toEqual(rectangle);
});

test('panelsBetween a panel and itself is the panel', () => {
  expect(names(at(5, 4), at(5, 4))).toEqual(['C5 R4']);
});
