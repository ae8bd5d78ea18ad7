import { expect, test } from 'vitest';
import { bandsOf } from '../../src/sheets/elevation-bands';
import { wallOf } from '../arbitraries/wall-fixture';

test('bandsOf a wall of one kind of row are its foot and its top', () => {
  expect(bandsOf(wallOf({ columns: 2, rows: 4, jointDeg: 0, baseMm: 200 }))).toEqual([200, 2200]);
});

test('bandsOf a wall of several begin where the height of rows changes', () => {
  const { table } = wallOf({ columns: 1, rows: 4, jointDeg: 0 });
  const [type] = table.types;
  // Two rows of 1000, then two of 500: their middles at 500, 1500, 2250, 2750.
  const mixed = {
    ...table,
    types: [{ ...type!, heightMm: 1000 }, type!],
    type: Uint8Array.of(0, 0, 1, 1),
    zMm: Float64Array.of(500, 1500, 2250, 2750),
  };
  expect(bandsOf({ table: mixed })).toEqual([0, 2000, 3000]);
});
