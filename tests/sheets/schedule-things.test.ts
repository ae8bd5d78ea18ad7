import { expect, test } from 'vitest';
import { listThings } from '../../src/calc/log/list-things';
import { scheduleThings } from '../../src/sheets/schedule-things';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const parts = stageFixture({ columns: 3, rows: 4, jointDeg: 0, splitAboveRow: 0 });

test('scheduleThings has a row for each column, port and circuit, with its panels from first to last', () => {
  const things = listThings(parts);
  const row = (of: 'column' | 'port' | 'circuit') => cells(scheduleThings(parts.surfaces, of, things[of]), 0);
  expect(row('column')).toEqual({ name: 'C1', panels: 4, first: 'C1 R1', last: 'C1 R4' });
  expect(row('port')).toEqual({ name: '1A-01', panels: 4, first: 'C1 R1', last: 'C1 R4' });
  expect(row('circuit')).toMatchObject({ name: parts.power.circuits[0]!.name, panels: 4 });
  expect(scheduleThings(parts.surfaces, 'column', things.column).count).toBe(3);
});

test('scheduleThings tells a port that a run only comes back to, from its far end', () => {
  const runs = {
    ...parts.runs,
    runs: parts.runs.runs.map((run, i) => (i === 0 ? { ...run, returnPort: '1B-01' } : run)),
  };
  const things = listThings({ ...parts, runs });
  const schedule = scheduleThings(parts.surfaces, 'port', things.port);
  const place = things.port.findIndex(({ name }) => name === '1B-01');
  expect(cells(schedule, place)).toEqual({ name: '1B-01', panels: 'return', first: 'C1 R4', last: 'C1 R1' });
});
