import { expect, it } from 'vitest';
import { scheduleMasses } from '../../src/sheets/schedule-masses';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const { surfaces } = stageFixture({
  columns: 3,
  rows: 2,
  jointDeg: 0,
  ceilingDiameterMm: 1000,
  hole: { column: 2, row: 1, columns: 1, rows: 1 },
});
const surface = { panelsKg: 0, fittingsKg: 0, totalKg: 0, heaviestColumnKg: 0, frameKg: null, floorKpa: null };
const schedule = scheduleMasses(surfaces, {
  surfaces: [
    { ...surface, surfaceId: 'wall-a', letter: 'A', columnKg: Float64Array.of(20, 10, 21) },
    { ...surface, surfaceId: 'ceiling-b', letter: 'B', columnKg: Float64Array.of(30, 31) },
  ],
  totalKg: 112,
});

it('scheduleMasses goes through the columns of all surfaces', () => {
  expect(schedule.count).toBe(5);
  expect([0, 1, 2, 3, 4].map((row) => schedule.row(row))).toEqual([
    ['A', 1, 2, 20],
    ['A', 2, 1, 10],
    ['A', 3, 2, 21],
    ['B', 1, 2, 30],
    ['B', 2, 2, 31],
  ]);
  expect(cells(schedule, 'totals')).toEqual({ surface: 'All', column: null, panels: 9, mass: 112 });
});

it('scheduleMasses leads to the lowest panel of a column', () => {
  // Five panels on the wall: column 2 has row 2 only.
  expect([0, 1, 2, 3, 4].map(schedule.panelOf)).toEqual([0, 2, 3, 5, 7]);
});
