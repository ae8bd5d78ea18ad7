import { expect, test } from 'vitest';
import { countByPanel, countByType } from '../../../src/calc/surfaces/count-by-type';
import { plainSurface, plainType } from '../zones/plain-surface';

test('countByType counts the panels of each type in the order of the types, holes left out', () => {
  const wall = plainSurface({
    columns: 3,
    bands: [
      { type: plainType(200), rows: 2 },
      { type: plainType(100), rows: 1 },
    ],
    isHole: (column, row) => column === 2 && row === 1,
  });
  expect(countByType(wall)).toEqual([5, 3]);
});

test('countByPanel counts a panel over every surface and every turn of it', () => {
  const upright = plainType(200);
  const lying = { ...plainType(200), panelId: upright.panelId, turnDeg: 90 } as const;
  const other = { ...plainType(100), panelId: 'other' };
  const wall = plainSurface({
    columns: 3,
    bands: [
      { type: upright, rows: 2 },
      { type: lying, rows: 1 },
    ],
  });
  const door = plainSurface({ columns: 2, bands: [{ type: other, rows: 1 }] });
  // 3 columns of 2 + 1 rows; 2 columns of 1 row; the wall once more.
  const counts = countByPanel({ surfaces: [wall, door, wall] });
  expect([...counts]).toEqual([
    [upright.panelId, 18],
    ['other', 2],
  ]);
});
