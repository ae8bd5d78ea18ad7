import type { TableBlock } from '../crew-set/crew-part';
import type { Format } from '../format';
import type { Cell, ScheduleColumn } from '../schedule';
import { pageStyle, type TextStyle } from './page-style';
import { printableText } from './printable-text';
import { textWidthMm } from './text-width';

/** A column of a table before it has a width. */
export interface MeasuredColumn {
  readonly title: string;
  readonly align: 'start' | 'end';
  readonly style: TextStyle;
  /** What stands in each row. */
  readonly texts: readonly string[];
  readonly total: string;
  /** Wide enough for every cell in one line and for every word of the head. */
  readonly naturalMm: number;
  /** Wide enough for every word. */
  readonly leastMm: number;
}

export interface MeasuredTable {
  readonly title: string;
  readonly columns: readonly MeasuredColumn[];
  /** Heads of empty boxes at the end of each row. */
  readonly boxes: readonly string[];
  readonly rows: number;
  readonly hasTotals: boolean;
}

/** Writes out every cell of a table and measures its columns. */
export function measureTable({ title, schedule, boxes = [] }: TableBlock, format: Format): MeasuredTable {
  const rows = Array.from({ length: schedule.count }, (_, row) => schedule.row(row));
  const columns = schedule.columns.map((column, place) =>
    measureColumn(
      column,
      rows.map((row) => writeCell(row[place] ?? null, column, format)),
      writeCell(schedule.totals?.[place] ?? null, column, format),
    ),
  );
  return { title, columns, boxes, rows: rows.length, hasTotals: schedule.totals !== null };
}

function writeCell(cell: Cell, { unit }: ScheduleColumn, format: Format): string {
  if (cell === null) return '';
  return typeof cell === 'number' && unit !== null ? format(cell, unit) : String(cell);
}

function measureColumn(
  { title, unit, align }: ScheduleColumn,
  texts: readonly string[],
  total: string,
): MeasuredColumn {
  const { words, figures, head, total: totalStyle } = pageStyle.texts;
  const style: TextStyle = unit === null ? words : figures;
  let naturalMm = widestWordMm(title, head);
  let leastMm = naturalMm;
  const take = (text: string, { face, sizeMm }: TextStyle) => {
    const width = textWidthMm(printableText(text, face), face, sizeMm);
    if (width <= leastMm) return;
    naturalMm = Math.max(naturalMm, width);
    leastMm = Math.max(leastMm, widestWordMm(text, { ...style, face, sizeMm }));
  };
  for (const text of texts) take(text, style);
  // A sum that is said in words may run on over its neighbours' place, and is broken where it must be.
  if (unit !== null) take(total, totalStyle);
  return { title, align, style, texts, total, naturalMm, leastMm };
}

function widestWordMm(text: string, { face, sizeMm }: TextStyle): number {
  return Math.max(...text.split(/\s/).map((word) => textWidthMm(printableText(word, face), face, sizeMm)));
}
