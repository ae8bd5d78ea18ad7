import { expect, it } from 'vitest';
import { readWiring } from '../../src/calc/runs/existing/read-wiring';
import { scheduleToCsv } from '../../src/files/schedule-to-csv';
import { scheduleWiring } from '../../src/sheets/schedule-wiring';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, zoneColumns: 2, splitAboveRow: 2 });
const schedule = scheduleWiring(parts);

it('scheduleWiring has a row for each panel in the order of its run', () => {
  // The last run goes down the third column from row 2 and up the fourth: C3 R2, C3 R1, C4 R1, C4 R2.
  expect(schedule.count).toBe(12);
  expect([8, 9, 10, 11].map((row) => cells(schedule, row))).toEqual([
    { panel: 'C3 R2', port: '2A-03', place: 1 },
    { panel: 'C3 R1', port: '2A-03', place: 2 },
    { panel: 'C4 R1', port: '2A-03', place: 3 },
    { panel: 'C4 R2', port: '2A-03', place: 4 },
  ]);
});

it('scheduleWiring as CSV is read back row for row', () => {
  const read = readWiring(scheduleToCsv(schedule, 'EUR'));
  expect(read.bad).toEqual([]);
  expect(read.rows).toHaveLength(12);
  expect(read.rows[11]).toEqual({ panel: 'C4 R2', port: '2A-03', place: 4 });
});

it('scheduleWiring of a stage without runs is empty', () => {
  const none = { ...parts.runs, runs: [], order: new Uint32Array(0) };
  expect(scheduleWiring({ ...parts, runs: none }).count).toBe(0);
});
