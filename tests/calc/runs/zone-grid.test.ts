import { expect, test } from 'vitest';
import { lowerEdgeMm, zoneGrid } from '../../../src/calc/runs/zone-grid';
import { plainSurface, plainType } from '../zones/plain-surface';

const isHole = (column: number, row: number) => column === 2 && row === 1;
const wall = plainSurface({ columns: 4, bands: [{ type: plainType(100), rows: 3 }], baseMm: 600, isHole });
const ceiling = plainSurface({ kind: 'ceiling', columns: 3, bands: [{ type: plainType(100), rows: 2 }] });
const zone = { firstColumn: 2, columns: 2, firstRow: 1, rows: 3 };
const all = { firstColumn: 1, columns: 3, firstRow: 1, rows: 2 };
/** Names of the panels of a ceiling, grid column after grid column, row 0 first. */
const places = (side: 'left' | 'right' | 'top' | 'bottom') => {
  const { panels, grid } = zoneGrid(ceiling, all, side);
  const names = [...panels].map((panel) => `${ceiling.column[panel]}${ceiling.row[panel]}`);
  return Array.from({ length: grid.columns }, (_, c) => names.slice(c * grid.rows, (c + 1) * grid.rows).join(' '));
};

test('zoneGrid takes a wall from the floor and counts its canvas from the corner of the zone', () => {
  const { grid, panels } = zoneGrid(wall, zone, 'top');
  expect([grid.columns, grid.rows]).toEqual([2, 3]);
  expect([...grid.present]).toEqual([0, 1, 1, 1, 1, 1]);
  expect([...panels].filter((panel) => panel < 0)).toEqual([-1]);
  expect([wall.column[panels[3]!], wall.row[panels[3]!]]).toEqual([3, 1]);
  expect([...grid.pixelLeft]).toEqual([0, 0, 0, 100, 100, 100]);
  expect([...grid.pixelTop]).toEqual([0, 100, 0, 200, 100, 0]);
  expect([...grid.pixelWidth]).toEqual([0, 100, 100, 100, 100, 100]);
  expect([...grid.entryHeightMm]).toEqual([0, 1100, 1600, 600, 1100, 1600]);
  expect([grid.columnPitchMm, grid.rowPitchMm]).toEqual([500, 500]);
});

test('zoneGrid of a lower zone counts its canvas from its own top row', () => {
  const tall = plainSurface({ columns: 2, bands: [{ type: plainType(100), rows: 5 }] });
  const { grid } = zoneGrid(tall, { firstColumn: 1, columns: 1, firstRow: 1, rows: 2 }, 'bottom');
  expect([...grid.pixelTop]).toEqual([100, 0]);
});

test('zoneGrid gives zones of equal shape equal grids wherever they stand', () => {
  const plain = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 3 }] });
  const of = (firstColumn: number) => zoneGrid(plain, { ...zone, firstColumn }, 'bottom').grid;
  expect(of(5)).toEqual(of(1));
});

test('zoneGrid turns a ceiling so that the side of its loom is row 0', () => {
  expect(places('bottom')).toEqual(['11 12', '21 22', '31 32']);
  expect(places('top')).toEqual(['32 31', '22 21', '12 11']);
  expect(places('left')).toEqual(['12 22 32', '11 21 31']);
  expect(places('right')).toEqual(['31 21 11', '32 22 12']);
});

test('zoneGrid counts the corner of the zone from the first panel too, where it alone reaches so far', () => {
  // Column 1 holds only its lowest panel, number 0: it is the leftmost of the zone.
  const ragged = plainSurface({
    columns: 2,
    bands: [{ type: plainType(100), rows: 2 }],
    isHole: (c, r) => c + r === 3 && c === 1,
  });
  const { grid } = zoneGrid(ragged, { firstColumn: 1, columns: 2, firstRow: 1, rows: 2 }, 'bottom');
  expect([...grid.present]).toEqual([1, 0, 1, 1]);
  expect([...grid.pixelLeft]).toEqual([0, 0, 100, 100]);
});

test('zoneGrid turns pitches with the ceiling', () => {
  const type = { ...plainType(100), widthMm: 500, heightMm: 1000 };
  const oblong = plainSurface({ kind: 'ceiling', columns: 3, bands: [{ type, rows: 2 }] });
  const { grid } = zoneGrid(oblong, all, 'left');
  expect([grid.columnPitchMm, grid.rowPitchMm]).toEqual([1000, 500]);
});

test('zoneGrid of a rectangle without panels has nothing present and no NaN', () => {
  const empty = plainSurface({ columns: 3, bands: [{ type: plainType(100), rows: 2 }], isHole: () => true });
  const { grid } = zoneGrid(empty, all, 'bottom');
  expect(grid.present.some((one) => one === 1)).toBe(false);
  expect([grid.columnPitchMm, grid.rowPitchMm]).toEqual([0, 0]);
});

// Handbook: row 5 of 0.5 m rows has its entry at 2.00 m, base included.
test('lowerEdgeMm of row 5 of half-metre rows is two metres, in whole micrometres', () => {
  const five = plainSurface({ columns: 1, bands: [{ type: plainType(100), rows: 5 }] });
  expect(lowerEdgeMm(five, 4)).toBe(2000);
  const feet = plainSurface({
    columns: 1,
    bands: [{ type: { ...plainType(100), heightMm: 609.6 }, rows: 5 }],
    baseMm: 0.1,
  });
  expect(lowerEdgeMm(feet, 4)).toBe(2438.5);
  expect(lowerEdgeMm(ceiling, 0)).toBe(6000);
});
