import { expect, test } from 'vitest';
import type { WallResult } from '../../src/calc/walls/wall-result';
import { elevationSlices } from '../../src/sheets/elevation-slices';
import { elevationView } from '../../src/sheets/elevation-view';
import { wallOf } from '../arbitraries/wall-fixture';

/** A flat wall of 500 mm columns about x = 0, its face at y = 0. */
const flat = (columns: number, rows: number) => wallOf({ columns, rows, jointDeg: 0 });
const at = (wall: WallResult, yMm: number, wallId = wall.wallId): WallResult => ({
  ...wall,
  wallId,
  frontMm: wall.frontMm.map((mm, i) => (i % 2 === 1 ? mm + yMm : mm)),
  backMm: wall.backMm.map((mm, i) => (i % 2 === 1 ? mm + yMm : mm)),
});

test('elevationSlices of a flat wall are its columns, from the left as it is looked at', () => {
  const slices = (side: 'front' | 'back') => {
    const wall = flat(3, 2);
    return elevationSlices([wall], elevationView([wall], side)).map(({ column, fromMm, toMm }) => [
      column,
      fromMm,
      toMm,
    ]);
  };
  expect(slices('front')).toEqual([
    [1, -750, -250],
    [2, -250, 250],
    [3, 250, 750],
  ]);
  expect(slices('back').map(([column]) => column)).toEqual([3, 2, 1]);
});

test('elevationSlices of a ring from outside are the near half of it: each place across shows one column', () => {
  // 36 columns of 500 at 10 degrees; the back corners lie on a radius of 2951 or so.
  const ring = wallOf({ columns: 36, rows: 2, jointDeg: 10 });
  const slices = elevationSlices([ring], elevationView([ring], 'front'));
  expect(slices.length).toBeLessThanOrEqual(19);
  for (let i = 1; i < slices.length; i++) expect(slices[i]!.fromMm).toBeCloseTo(slices[i - 1]!.toMm, 6);
  // The middle column, at +y, stands opposite and is hidden.
  expect(slices.map(({ column }) => column)).not.toContain(18);
});

test('elevationSlices through an opening show what stands opposite', () => {
  const ring = wallOf({ columns: 30, rows: 2, jointDeg: 10 });
  const columns = elevationSlices([ring], elevationView([ring], 'front')).map(({ column }) => column);
  expect(columns).toContain(15);
  expect(columns).toContain(1);
});

test('elevationSlices of a high wall behind a low one show it above that', () => {
  const low = flat(1, 2);
  const high = at(flat(3, 6), 2000, 'high');
  const view = elevationView([low], 'front');
  const slices = elevationSlices([low, high], view);
  expect(slices.map(({ wall, column, overMm }) => [wall.wallId, column, overMm])).toEqual([
    ['high', 1, Number.NEGATIVE_INFINITY],
    ['wall-a', 1, Number.NEGATIVE_INFINITY],
    ['high', 2, 1000],
    ['high', 3, Number.NEGATIVE_INFINITY],
  ]);
  // The low one behind the high one is not seen at all.
  const hidden = elevationSlices([at(low, 5000), high], view);
  expect(hidden.map(({ wall }) => wall.wallId)).toEqual(['high', 'high', 'high']);
});

test('elevationSlices of no walls are none', () => {
  expect(elevationSlices([], elevationView([], 'front'))).toEqual([]);
});
