import { expect, it } from 'vitest';
import { scheduleCircuits } from '../../src/sheets/schedule-circuits';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const schedule = scheduleCircuits(stageFixture({ columns: 3, rows: 2, jointDeg: 0 }));

it('scheduleCircuits has a row for each circuit, its chain, leg and load', () => {
  expect(cells(schedule, 1)).toEqual({
    circuit: 'D1-2',
    distro: 1,
    leg: 'L2',
    panels: 2,
    entry: 'C2 R1',
    last: 'C2 R2',
    entryHeight: 0,
    watts: 300,
    current: 300 / (230 * 0.95),
    limit: 12.8,
  });
});

it('scheduleCircuits sums panels and watts, never currents of different legs', () => {
  expect(cells(schedule, 'totals')).toMatchObject({ circuit: '3 circuits', panels: 6, watts: 900, current: null });
  expect(schedule.panelOf(1)).toBe(2);
});
