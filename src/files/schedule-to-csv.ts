import { csvFormatRow } from 'd3-dsv';
import type { Cell, Schedule } from '../sheets/schedule';
import { columnHeading } from './column-heading';
import { plainNumber } from './plain-number';

/** Tells a spreadsheet that the file is UTF-8. */
const byteOrderMark = '\ufeff';

/**
 * A schedule as a CSV file: heading, rows, totals where there are some; figures plain, in the unit that the heading names,
 * with a decimal point. Source of the form: RFC 4180. `currency` is an ISO 4217 code.
 */
export function scheduleToCsv(schedule: Schedule, currency: string): string {
  const lines = [schedule.columns.map((column) => asText(columnHeading(column, currency)))];
  for (let index = 0; index < schedule.count; index++) lines.push(schedule.row(index).map(cellText));
  if (schedule.totals !== null) lines.push(schedule.totals.map(cellText));
  return `${byteOrderMark}${lines.map((line) => `${csvFormatRow(line)}\r\n`).join('')}`;
}

function cellText(cell: Cell): string {
  if (typeof cell === 'string') return asText(cell);
  return cell === null ? '' : String(plainNumber(cell) ?? '');
}

/** Words that a spreadsheet would take for a formula begin with an apostrophe. Source: OWASP, CSV Injection. */
function asText(words: string): string {
  return /^[=+\-@\t\r\n＝＋－＠]/.test(words) ? `'${words}` : words;
}
