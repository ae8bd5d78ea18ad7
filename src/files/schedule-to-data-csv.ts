import { csvFormatRow } from 'd3-dsv';
import type { Schedule } from '../sheets/schedule';
import { csvCell } from './csv-cell';

/**
 * A schedule as a CSV file for a program to read: the columns' keys as heading, figures plain, no totals and no byte order
 * mark. Source of the form: RFC 4180.
 */
export function scheduleToDataCsv(schedule: Schedule): string {
  const lines = [schedule.columns.map(({ key }) => key)];
  for (let index = 0; index < schedule.count; index++) lines.push(schedule.row(index).map(csvCell));
  return lines.map((line) => `${csvFormatRow(line)}\r\n`).join('');
}
