import { csvFormatRow } from 'd3-dsv';
import type { Schedule } from '../sheets/schedule';
import { columnHeading } from './column-heading';
import { csvCell, csvWords } from './csv-cell';

/** Tells a spreadsheet that the file is UTF-8. */
const byteOrderMark = '\ufeff';

/**
 * A schedule as a CSV file: heading, rows, totals where there are some; figures plain, in the unit that the heading names,
 * with a decimal point. Source of the form: RFC 4180. `currency` is an ISO 4217 code.
 */
export function scheduleToCsv(schedule: Schedule, currency: string): string {
  const lines = [schedule.columns.map((column) => csvWords(columnHeading(column, currency)))];
  for (let index = 0; index < schedule.count; index++) lines.push(schedule.row(index).map(csvCell));
  if (schedule.totals !== null) lines.push(schedule.totals.map(csvCell));
  return `${byteOrderMark}${lines.map((line) => `${csvFormatRow(line)}\r\n`).join('')}`;
}
