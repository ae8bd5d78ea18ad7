import type { Schedule } from './schedule';

/** Some columns of a schedule by their keys, in the order given; keys that it has not are left out. */
export function takeColumns(schedule: Schedule, keys: readonly string[]): Schedule {
  const taken = keys.flatMap((key) => {
    const place = schedule.columns.findIndex((column) => column.key === key);
    return place < 0 ? [] : [place];
  });
  return {
    ...schedule,
    columns: taken.map((place) => schedule.columns[place]!),
    row: (index) => {
      const row = schedule.row(index);
      return taken.map((place) => row[place]!);
    },
    totals: schedule.totals === null ? null : taken.map((place) => schedule.totals![place]!),
  };
}
