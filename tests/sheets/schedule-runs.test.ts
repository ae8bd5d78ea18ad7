import { expect, it } from 'vitest';
import { scheduleRuns } from '../../src/sheets/schedule-runs';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, zoneColumns: 2, splitAboveRow: 2 });
const schedule = scheduleRuns(parts);

it('scheduleRuns has a row for each run with its entry, end and load', () => {
  // A zone of two columns: row 3 of each is a run, below it one run down the first column and up the second.
  expect(schedule.count).toBe(6);
  expect(cells(schedule, 5)).toEqual({
    port: '2A-03',
    surface: 'A',
    processor: 2,
    panels: 4,
    entry: 'C3 R2',
    last: 'C4 R2',
    entryHeight: 500,
    reach: 'yes',
    pixels: 4 * 216 * 216,
    share: (4 * 216 * 216) / 520_000,
  });
});

it('scheduleRuns counts every panel once and leads from a row to its entry', () => {
  expect(cells(schedule, 'totals')).toMatchObject({ port: '6 ports', panels: 12, pixels: 12 * 216 * 216 });
  // Column 3, row 2 is the eighth panel.
  expect(schedule.panelOf(5)).toBe(7);
});

it('scheduleRuns leaves the processor open where the zone is gone', () => {
  expect(cells(scheduleRuns({ ...parts, zones: [] }), 0)).toMatchObject({ processor: null, surface: null });
});
