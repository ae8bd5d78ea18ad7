import type { Cell, Schedule, ScheduleColumn } from '../../src/sheets/schedule';

/** A schedule of the rows given: words, a count, a length, money and a share. */
export function smallSchedule(rows: readonly (readonly Cell[])[], totals: readonly Cell[] | null = null): Schedule {
  const columns: ScheduleColumn[] = [
    { key: 'item', title: 'Item', unit: null, align: 'start' },
    { key: 'needed', title: 'Needed', unit: 'count', align: 'end' },
    { key: 'length', title: 'Length', unit: 'mm', align: 'end' },
    { key: 'price', title: 'Price', unit: 'money', align: 'end' },
    { key: 'share', title: 'Share', unit: 'share', align: 'end' },
  ];
  return {
    id: 'small',
    title: 'Small',
    columns,
    count: rows.length,
    row: (i) => rows[i]!,
    panelOf: () => null,
    totals,
  };
}
