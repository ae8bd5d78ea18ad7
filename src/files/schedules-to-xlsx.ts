import writeWorkbook, { type Sheet } from 'write-excel-file/universal';
import type { Cell, Schedule, ScheduleColumn } from '../sheets/schedule';
import type { Unit } from '../units/unit';
import { columnHeading } from './column-heading';
import { nameSheets } from './name-sheets';
import { plainNumber } from './plain-number';
import { setZipTimes } from './set-zip-times';

/** How a spreadsheet shows the figures of a unit; what it keeps is the figure itself. */
const formats: Readonly<Record<Unit, string>> = {
  mm: '#,##0.0',
  m2: '#,##0.00',
  m3: '#,##0.00',
  deg: '0.00',
  px: '#,##0',
  kg: '#,##0.0',
  kPa: '#,##0.00',
  A: '#,##0.0',
  V: '#,##0.0',
  W: '#,##0',
  tons: '#,##0.00',
  btuh: '#,##0',
  'm3/s': '#,##0.00',
  min: '#,##0.0',
  s: '#,##0.000',
  Hz: '#,##0.###',
  fps: '0.###',
  bit: '0',
  bps: '#,##0',
  share: '0.0%',
  money: '#,##0.00',
  days: '#,##0',
  K: '0.0',
  count: '#,##0',
};

type WorkbookCell = Sheet<Blob>['data'][number][number];

/**
 * Schedules as one spreadsheet file, a sheet each: heading bold and always in view, figures as numbers, totals bold.
 * The same schedules give the same bytes. `currency` is an ISO 4217 code.
 */
export async function schedulesToXlsx(
  schedules: readonly [Schedule, ...Schedule[]],
  currency: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const names = nameSheets(schedules.map((schedule) => schedule.title));
  const sheets = schedules.map((schedule, i) => sheetOf(schedule, names[i]!, currency));
  const blob = await writeWorkbook(sheets).toBlob();
  return setZipTimes(new Uint8Array(await blob.arrayBuffer()));
}

function sheetOf(schedule: Schedule, sheet: string, currency: string): Sheet<Blob> {
  const { columns, totals } = schedule;
  const headings = columns.map((column) => columnHeading(column, currency));
  const rows = Array.from({ length: schedule.count }, (_, index) => schedule.row(index));
  return {
    sheet,
    stickyRowsCount: 1,
    columns: columns.map((_, i) => ({ width: widthOf([headings[i]!, ...rows.map((row) => row[i] ?? null)]) })),
    data: [
      headings.map((value, i) => ({ value, ...bold, align: columns[i]!.align === 'end' ? 'right' : 'left' }) as const),
      ...rows.map((row) => row.map((cell, i) => workbookCell(cell, columns[i]!))),
      ...(totals === null ? [] : [totals.map((cell, i) => workbookCell(cell, columns[i]!, bold))]),
    ],
  };
}

const bold = { fontWeight: 'bold' } as const;

function workbookCell(cell: Cell, { unit, align }: ScheduleColumn, style: typeof bold | object = {}): WorkbookCell {
  if (cell === null) return null;
  if (typeof cell === 'string') {
    return { value: coded(cell), type: String, align: align === 'end' ? 'right' : 'left', ...style };
  }
  const value = plainNumber(cell);
  return value === null ? null : { value, type: Number, format: formats[unit ?? 'count'], ...style };
}

/** Width in characters that shows most cells whole: no narrower than a figure, no wider than a sentence. */
function widthOf(cells: readonly Cell[]): number {
  const longest = cells.reduce<number>((most, cell) => Math.max(most, shownLength(cell)), 0);
  return Math.min(Math.max(Math.ceil(longest) + 2, 8), 48);
}

/** Figures are shown with marks for thousands and up to three decimals. */
function shownLength(cell: Cell): number {
  return typeof cell === 'number' ? Math.trunc(cell).toString().length * 1.4 + 4 : (cell ?? '').length;
}

/**
 * Words that look like the code of a character would be read as one: their first sign is written as its code. So is that of
 * words that every object of the language knows ('valueOf'), which the writer takes for words that it has seen before.
 * Source: ECMA-376, part 1, ST_Xstring.
 */
function coded(words: string): string {
  const plain = words.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
  return plain in {} ? `_x${plain.charCodeAt(0).toString(16).padStart(4, '0')}_${plain.slice(1)}` : plain;
}
