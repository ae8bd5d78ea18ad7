import { expect, test } from 'vitest';
import { measureStrip, rowEdges } from '../../../src/calc/zones/measure-strip';
import { plainSurface, plainType } from './plain-surface';

const wall = plainSurface({
  columns: 4,
  bands: [
    { type: plainType(200), rows: 2 },
    { type: plainType(100), rows: 1 },
  ],
  isHole: (column, row) => column === 2 && row < 3,
});

test('measureStrip sums panels and pixels up to each column', () => {
  const strip = measureStrip(wall, 0, 2);
  expect([...strip.panelsBefore]).toEqual([0, 2, 2, 4, 6]);
  expect([...strip.pixelsBefore]).toEqual([0, 80_000, 80_000, 160_000, 240_000]);
  expect(strip.canvasHeight).toBe(400);
});

test('measureStrip finds the edges of what is there, across an empty column', () => {
  const { leftFrom, rightBefore } = measureStrip(wall, 0, 2);
  expect([...leftFrom]).toEqual([0, 400, 400, 600, Number.POSITIVE_INFINITY]);
  expect([...rightBefore]).toEqual([0, 200, 200, 600, 800]);
});

test('measureStrip of a band with fewer pixels follows its real offsets on the canvas', () => {
  const strip = measureStrip(wall, 2, 3);
  expect(strip.canvasHeight).toBe(100);
  expect([...strip.rightBefore]).toEqual([0, 100, 300, 500, 700]);
});

test('measureStrip of rows without panels has no height', () => {
  const empty = plainSurface({ columns: 2, bands: [{ type: plainType(100), rows: 2 }], isHole: (_, row) => row === 1 });
  expect(measureStrip(empty, 0, 1).canvasHeight).toBe(0);
});

test('rowEdges counts down from the top row and marks a row without panels', () => {
  const edges = rowEdges(wall);
  expect([...edges.top]).toEqual([300, 100, 0]);
  expect([...edges.bottom]).toEqual([500, 300, 100]);
  const empty = plainSurface({ columns: 2, bands: [{ type: plainType(100), rows: 2 }], isHole: (_, row) => row === 1 });
  expect([...rowEdges(empty).top]).toEqual([-1, 0]);
});
