import { expect, test } from 'vitest';
import type { Schedule } from '../../src/sheets/schedule';
import { figures, words } from '../../src/sheets/schedule-column';
import { takeRows } from '../../src/sheets/take-rows';

const schedule: Schedule = {
  id: 'x',
  title: 'X',
  columns: [words('name', 'Name'), figures('count', 'Count', 'count'), figures('share', 'Share', 'share')],
  count: 3,
  row: (index) => [`row ${index}`, [10, null, 5][index]!, 0.5],
  panelOf: (index) => index * 100,
  totals: ['3 rows', 15, null],
};

test('takeRows gives the rows asked for, in their order, each leading to its own panel', () => {
  const taken = takeRows(schedule, [2, 0]);
  expect(taken.count).toBe(2);
  expect([taken.row(0)[0], taken.row(1)[0]]).toEqual(['row 2', 'row 0']);
  expect([taken.panelOf(0), taken.panelOf(1)]).toEqual([200, 0]);
});

test('takeRows sums what the whole schedule sums, over its own rows; words that count all rows go', () => {
  expect(takeRows(schedule, [0, 1]).totals).toEqual([null, 10, null]);
  expect(takeRows({ ...schedule, totals: null }, [0]).totals).toBeNull();
});
