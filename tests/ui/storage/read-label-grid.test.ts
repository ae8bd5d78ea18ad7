import { expect, test } from 'vitest';
import { startingGrids } from '../../../src/sheets/labels/starting-grids';
import { readLabelGrid } from '../../../src/ui/storage/read-label-grid';

const grid = startingGrids[0]!;

test('readLabelGrid takes what was written', () => {
  for (const any of startingGrids) expect(readLabelGrid(JSON.parse(JSON.stringify(any)))).toEqual(any);
});

test.each([
  undefined,
  null,
  'a4',
  {},
  { ...grid, paper: 'b5' },
  { ...grid, rows: 0 },
  { ...grid, columns: 2.5 },
  { ...grid, columns: 101 },
  { ...grid, leftMm: -1 },
  { ...grid, downMm: '2' },
])('readLabelGrid of %j is null', (value) => {
  expect(readLabelGrid(value)).toBeNull();
});
