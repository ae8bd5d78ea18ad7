import { expect, it } from 'vitest';
import { scheduleZones } from '../../src/sheets/schedule-zones';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const parts = stageFixture({ columns: 5, rows: 3, jointDeg: 0, zoneColumns: 3 });
const schedule = scheduleZones(parts);

it('scheduleZones has a row for each processor with its rectangle and canvas', () => {
  expect(cells(schedule, 1)).toEqual({
    processor: 2,
    surface: 'A',
    columns: 'C4 to C5',
    rows: 'R1 to R3',
    panels: 6,
    canvasWidth: 648,
    canvasHeight: 648,
    blankColumns: 1,
    breakouts: 2,
    ports: 20,
  });
  expect(cells(scheduleZones(stageFixture({ columns: 1, rows: 1, jointDeg: 0 })), 0)).toMatchObject({
    columns: 'C1',
    rows: 'R1',
  });
});

it('scheduleZones sums what can be summed and leads to a zone by its first panel', () => {
  expect(cells(schedule, 'totals')).toMatchObject({ surface: '2 zones', panels: 15, blankColumns: 1, ports: 40 });
  expect([schedule.panelOf(0), schedule.panelOf(1)]).toEqual([0, 9]);
});

it('scheduleZones leads to the next panel where the corner is a hole, and nowhere where the surface is gone', () => {
  const holed = stageFixture({ columns: 3, rows: 2, jointDeg: 0, hole: { column: 1, row: 1, columns: 1, rows: 1 } });
  // The corner is a hole: the first panel that is left stands above it.
  expect(scheduleZones(holed).panelOf(0)).toBe(0);
  const elsewhere = parts.zones.map((zone) => ({ ...zone, surfaceId: 'elsewhere' }));
  expect(scheduleZones({ ...parts, zones: elsewhere }).panelOf(0)).toBeNull();
});
