import { expect, test } from 'vitest';
import { paintBorder, paintZoneEdge } from '../../../../src/calc/outputs/picture/paint-borders';
import { cornerZones } from '../corner-stage';
import { blankRaster, rowsOf } from './raster-text';

test('paintBorder is one pixel wide, on the outermost pixels', () => {
  const raster = blankRaster(6, 5);
  paintBorder(raster, { panel: 0, x: 1, y: 1, width: 4, height: 3 });
  expect(rowsOf(raster)).toEqual(['......', '.1111.', '.1..1.', '.1111.', '......']);
});

test('paintZoneEdge marks those sides of a panel that are sides of its zone, inside its border', () => {
  const [zone] = cornerZones;
  const spot = { panel: 0, x: 0, y: 0, width: 12, height: 12 };
  const edgeOf = (column: number, row: number) => {
    const raster = blankRaster(12, 12);
    paintZoneEdge(raster, spot, { ...zone!, firstColumn: 1, columns: 2, firstRow: 1, rows: 2 }, column, row);
    return rowsOf(raster);
  };
  // C1 R1 of two by two: left and lower side.
  const lowerLeft = edgeOf(1, 1);
  expect(lowerLeft[5]).toBe('..55........');
  expect(lowerLeft[9]).toBe('..55555555..');
  expect(lowerLeft[1]).toBe('............');
  expect(lowerLeft[2]).toBe('..55........');
  // C2 R2: right and upper side.
  const upperRight = edgeOf(2, 2);
  expect(upperRight[2]).toBe('..55555555..');
  expect(upperRight[5]).toBe('........55..');
  expect(upperRight[9]).toBe('........55..');
});
