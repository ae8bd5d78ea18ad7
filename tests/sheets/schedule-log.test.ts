import { expect, test } from 'vitest';
import { listThings } from '../../src/calc/log/list-things';
import { stateOfLog } from '../../src/calc/log/log-state';
import type { Tick } from '../../src/plan/build-log';
import { scheduleLog } from '../../src/sheets/schedule-log';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const stage = stageFixture({ columns: 4, rows: 3, jointDeg: 0 });
const tick: Tick = { step: 'stands', of: 'column', name: 'C2', done: true, who: 'Ada', atMs: 951_827_696_000 };
const scheduleOf = (ticks: Tick[]) => scheduleLog(stateOfLog(stage.surfaces, listThings(stage), { ticks }));

test('scheduleLog has a row for what was ticked, with who and when, and none for what was not', () => {
  const schedule = scheduleOf([tick, { ...tick, step: 'tested', done: false, who: 'Bo' }]);
  expect(schedule.count).toBe(1);
  expect(schedule.row(0)).toEqual([
    'column',
    'C2',
    3,
    ...['yes', 'Ada', '2000-02-29 12:34'],
    ...[null, null, null, null, null, null],
    ...['taken back', 'Bo', '2000-02-29 12:34'],
  ]);
  // Panels are numbered column by column from the floor: C2 begins with 3.
  expect(schedule.panelOf(0)).toBe(3);
});

test('scheduleLog puts what is not in the plan now last, without panels, and counts what is done', () => {
  const schedule = scheduleOf([tick, { ...tick, of: 'port', name: '9A-01' }, { ...tick, of: 'circuit', name: 'D1-1' }]);
  expect([0, 1, 2].map((index) => schedule.row(index).slice(0, 3))).toEqual([
    ['column', 'C2', 3],
    ['circuit', 'D1-1', 3],
    ['port', '9A-01', null],
  ]);
  expect(schedule.panelOf(2)).toBeNull();
  expect(schedule.totals?.slice(0, 4)).toEqual([null, '3 things', null, '3 done']);
  expect(schedule.totals).toHaveLength(schedule.columns.length);
});

test('scheduleLog of a log without ticks has no row', () => {
  expect(scheduleOf([]).count).toBe(0);
});
