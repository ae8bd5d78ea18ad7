import type { Cell, Schedule } from './schedule';

/** Some rows of a schedule, in the order given, under the same columns; what was summed is summed over them. */
export function takeRows(schedule: Schedule, rows: readonly number[]): Schedule {
  return {
    ...schedule,
    count: rows.length,
    row: (index) => schedule.row(rows[index]!),
    panelOf: (index) => schedule.panelOf(rows[index]!),
    totals: schedule.totals?.map((total, column) => totalOf(schedule, rows, total, column)) ?? null,
  };
}

function totalOf(schedule: Schedule, rows: readonly number[], total: Cell, column: number): Cell {
  if (typeof total !== 'number') return null;
  return rows.reduce((sum, row) => {
    const cell = schedule.row(row)[column];
    return typeof cell === 'number' ? sum + cell : sum;
  }, 0);
}
