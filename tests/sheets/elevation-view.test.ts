import { expect, test } from 'vitest';
import { acrossMm, depthMm, elevationView } from '../../src/sheets/elevation-view';
import { wallOf } from '../arbitraries/wall-fixture';

const rounded = (view: ReturnType<typeof elevationView>) =>
  Object.values(view).map((part) => Math.round(part * 1000) / 1000 + 0);

/** A horseshoe with its middle at +y: it opens to -y. */
const horseshoe = wallOf({ columns: 40, rows: 4, jointDeg: 4 });

test('elevationView from the front looks in at the opening, plan right on the right', () => {
  expect(rounded(elevationView([horseshoe], 'front'))).toEqual([0, 1, 1, 0]);
});

test('elevationView from behind and from the right see left and right as they are there', () => {
  expect(rounded(elevationView([horseshoe], 'back'))).toEqual([0, -1, -1, 0]);
  // From plan +x looking to -x: +y on the right, so the open side on the left.
  expect(rounded(elevationView([horseshoe], 'right'))).toEqual([-1, 0, 0, 1]);
});

test('elevationView of walls that close all round, and of none, looks from plan -y', () => {
  const ring = wallOf({ columns: 36, rows: 4, jointDeg: 10 });
  expect(rounded(elevationView([ring], 'front'))).toEqual([0, 1, 1, 0]);
  expect(rounded(elevationView([], 'front'))).toEqual([0, 1, 1, 0]);
});

test('acrossMm and depthMm measure along the picture and into it', () => {
  const view = elevationView([horseshoe], 'back');
  const point = { xMm: 300, yMm: -70 };
  expect(Math.round(acrossMm(view, point))).toBe(-300);
  expect(Math.round(depthMm(view, point))).toBe(70);
});
