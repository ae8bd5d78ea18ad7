import { expect, test } from 'vitest';
import type { Schedule } from '../../src/sheets/schedule';
import { figures, words } from '../../src/sheets/schedule-column';
import { takeColumns } from '../../src/sheets/take-columns';

const schedule: Schedule = {
  id: 'x',
  title: 'X',
  columns: [words('name', 'Name'), figures('count', 'Count', 'count'), figures('share', 'Share', 'share')],
  count: 2,
  row: (index) => [`row ${index}`, index, 0.5],
  panelOf: () => null,
  totals: ['2 rows', 1, null],
};

test('takeColumns keeps rows and totals under the columns asked for, in their order', () => {
  const taken = takeColumns(schedule, ['share', 'name', 'unknown']);
  expect(taken.columns.map(({ key }) => key)).toEqual(['share', 'name']);
  expect(taken.row(1)).toEqual([0.5, 'row 1']);
  expect(taken.totals).toEqual([null, '2 rows']);
  expect(takeColumns({ ...schedule, totals: null }, ['name']).totals).toBeNull();
});
