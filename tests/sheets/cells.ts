import type { Cell, Schedule } from '../../src/sheets/schedule';

/** One row, or the totals, by the keys of the columns. */
export function cells(schedule: Schedule, row: number | 'totals'): Readonly<Record<string, Cell>> {
  const values = row === 'totals' ? schedule.totals : schedule.row(row);
  if (values?.length !== schedule.columns.length) throw new Error('a row has as many cells as there are columns');
  return Object.fromEntries(schedule.columns.map((column, i) => [column.key, values[i]!]));
}
