import { expect, test } from 'vitest';
import { enclosing, zoneRectangle } from '../../../src/calc/nodes/zone-rectangle';
import { plainSurface, plainType } from '../zones/plain-surface';

test('zoneRectangle is the smallest that holds the panels of the zone, counted from the top of the canvas', () => {
  // 4 x 3 panels of 100 px; the zone is columns 2 and 3, rows 1 and 2: 200 px from the left, a row (100 px) from the top.
  const table = plainSurface({ columns: 4, bands: [{ type: plainType(100), rows: 3 }] });
  expect(zoneRectangle(table, { firstColumn: 2, columns: 2, firstRow: 1, rows: 2 })).toEqual({
    left: 100,
    top: 100,
    right: 300,
    bottom: 300,
    litPixels: 40_000,
  });
});

test('zoneRectangle leaves out what no panel lights at its edges, and counts no hole inside', () => {
  // Column 1 is empty, and the middle of the three columns left over lacks its middle panel.
  const table = plainSurface({
    columns: 4,
    bands: [{ type: plainType(100), rows: 3 }],
    isHole: (column, row) => column === 1 || (column === 3 && row === 2),
  });
  expect(zoneRectangle(table, { firstColumn: 1, columns: 4, firstRow: 1, rows: 3 })).toEqual({
    left: 100,
    top: 0,
    right: 400,
    bottom: 300,
    litPixels: 80_000,
  });
});

test('zoneRectangle of unlike bands reaches as far as the widest', () => {
  // A row of 200 px panels under a row of 100 px ones: columns are 200 px wide on the canvas.
  const table = plainSurface({
    columns: 2,
    bands: [
      { type: plainType(200), rows: 1 },
      { type: plainType(100), rows: 1 },
    ],
  });
  expect(zoneRectangle(table, { firstColumn: 1, columns: 2, firstRow: 2, rows: 1 })).toMatchObject({
    left: 0,
    top: 0,
    right: 300,
    bottom: 100,
  });
  expect(zoneRectangle(table, { firstColumn: 1, columns: 2, firstRow: 1, rows: 2 })).toMatchObject({
    right: 400,
    bottom: 300,
    litPixels: 100_000,
  });
});

test('enclosing holds all its parts and adds what lights', () => {
  const a = { left: 10, top: 20, right: 30, bottom: 40, litPixels: 5 };
  const b = { left: 0, top: 25, right: 12, bottom: 90, litPixels: 7 };
  expect(enclosing([a, b])).toEqual({ left: 0, top: 20, right: 30, bottom: 90, litPixels: 12 });
});
