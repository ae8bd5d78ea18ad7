import type { Box } from '../drawing';
import { breakLines } from './break-lines';
import { columnWidths } from './column-widths';
import type { MeasuredColumn, MeasuredTable } from './measure-table';
import type { PageItem } from './page';
import { pageStyle, type TextStyle } from './page-style';
import type { Piece } from './piece';
import { printableText } from './printable-text';
import { ruleBoxes, ruleLines } from './rule-lines';
import { textWidthMm } from './text-width';
import { baselineMm, linesHeightMm, writeLines, writeText } from './write-text';

const padMm = 0.45;
/** A row whose boxes are written into by hand. */
const boxRowMm = 7;
const boxPadMm = 0.6;
/** A row of more lines than this may be torn: it would not go into a page. */
const mostLines = 14;

/** Where a column stands, from the left edge of its table. */
interface Column extends MeasuredColumn {
  readonly leftMm: number;
  readonly widthMm: number;
}

interface LaidTable {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly boxes: readonly { readonly head: string; readonly leftMm: number; readonly widthMm: number }[];
  readonly widthMm: number;
  readonly gapMm: number;
}

/** A table in so much room: its head, a piece for each row, and its sums under the last. The head is repeated wherever it goes on. */
export function tablePieces(table: MeasuredTable, roomMm: number): readonly Piece[] {
  const laid = layOut(table, roomMm);
  const head = headPiece(laid, table.title);
  const again = { ...headPiece(laid, table.title === '' ? '' : `${table.title}, continued`), spaceMm: 0 };
  const pieces: Piece[] = [{ ...head, spaceMm: pageStyle.blockGapMm, withNext: true, head: null }];
  for (let row = 0; row < table.rows; row++) {
    const cells = laid.columns.map((column) => cellLines(column.texts[row] ?? '', column.style, column.widthMm));
    pieces.push(...rowPieces(laid, cells, again));
  }
  if (table.hasTotals) {
    const last = pieces.length - 1;
    if (last > 0) pieces[last] = { ...pieces[last]!, withNext: true };
    pieces.push(totalsPiece(laid, again));
  }
  return pieces;
}

function layOut(table: MeasuredTable, roomMm: number): LaidTable {
  const widths = columnWidths(table, roomMm);
  let leftMm = 0;
  const columns = table.columns.map((column, i) => {
    const placed = { ...column, leftMm, widthMm: widths.columnsMm[i]! };
    leftMm += widths.columnsMm[i]! + widths.gapMm;
    return placed;
  });
  const boxes = table.boxes.map((head, i) => ({
    head,
    leftMm: leftMm - widths.gapMm + i * widths.boxMm + 1,
    widthMm: widths.boxMm - 1,
  }));
  return { title: table.title, columns, boxes, widthMm: widths.totalMm, gapMm: widths.gapMm };
}

function cellLines(text: string, { face, sizeMm }: TextStyle, widthMm: number): readonly string[] {
  if (text === '') return [];
  const printable = printableText(text, face);
  return textWidthMm(printable, face, sizeMm) <= widthMm + 1e-9 ? [printable] : breakLines(text, face, sizeMm, widthMm);
}

/** Title and heads of the columns, with a line under them. */
function headPiece({ columns, boxes, widthMm }: LaidTable, title: string): Pick<Piece, 'heightMm' | 'place'> {
  const { tableTitle, head } = pageStyle.texts;
  const titles = title === '' ? [] : breakLines(title, tableTitle.face, tableTitle.sizeMm, widthMm);
  const heads = [
    ...columns.map((column) => ({
      lines: cellLines(column.title, head, column.widthMm),
      xMm: column.align === 'end' ? column.leftMm + column.widthMm : column.leftMm,
      align: column.align,
    })),
    ...boxes.map((box) => ({
      lines: cellLines(box.head, head, box.widthMm),
      xMm: box.leftMm,
      align: 'start' as const,
    })),
  ];
  const titleMm = linesHeightMm(tableTitle, titles.length) + (titles.length === 0 ? 0 : 0.8);
  const headMm = linesHeightMm(head, Math.max(0, ...heads.map(({ lines }) => lines.length)));
  const heightMm = titleMm + headMm + 1.2;
  return {
    heightMm,
    place: (leftMm, topMm) => [
      ...writeLines(titles, leftMm, topMm, tableTitle),
      ...heads.flatMap(({ lines, xMm, align }) =>
        writeLines(lines, leftMm + xMm, topMm + titleMm + headMm - linesHeightMm(head, lines.length), head, align),
      ),
      ruleLines([[leftMm, topMm + heightMm - 0.6, leftMm + widthMm, topMm + heightMm - 0.6]], pageStyle.strokes.head),
    ],
  };
}

/** One row; in several pieces only where it is higher than a page. */
function rowPieces(laid: LaidTable, cells: readonly (readonly string[])[], head: Piece['head']): readonly Piece[] {
  const lines = Math.max(1, ...cells.map((cell) => cell.length));
  const parts = Math.ceil(lines / mostLines);
  return Array.from({ length: parts }, (_, part) => {
    const here = cells.map((cell) => cell.slice(part * mostLines, (part + 1) * mostLines));
    return rowPiece(laid, here, head, part === parts - 1);
  });
}

function rowPiece(laid: LaidTable, cells: readonly (readonly string[])[], head: Piece['head'], isLast: boolean): Piece {
  const boxes = isLast ? laid.boxes : [];
  const tallest = Math.max(
    linesHeightMm(pageStyle.texts.words, 1),
    ...cells.map((cell, i) => linesHeightMm(laid.columns[i]!.style, cell.length)),
  );
  const heightMm = Math.max(tallest + 2 * padMm, boxes.length > 0 ? boxRowMm : 0);
  return {
    heightMm,
    spaceMm: 0,
    withNext: false,
    head,
    place: (leftMm, topMm) => {
      const shift = boxes.length > 0 ? (heightMm - tallest) / 2 : padMm;
      const items: PageItem[] = cells.flatMap((cell, i) => cellTexts(laid.columns[i]!, cell, leftMm, topMm + shift));
      if (isLast) {
        const y = topMm + heightMm;
        items.push(ruleLines([[leftMm, y, leftMm + laid.widthMm, y]], pageStyle.strokes.row));
      }
      if (boxes.length > 0) {
        items.push(
          ruleBoxes(
            boxes.map(
              (box): Box => ({
                leftMm: leftMm + box.leftMm,
                topMm: topMm + boxPadMm,
                rightMm: leftMm + box.leftMm + box.widthMm,
                bottomMm: topMm + heightMm - boxPadMm,
              }),
            ),
            pageStyle.strokes.box,
          ),
        );
      }
      return items;
    },
  };
}

function cellTexts(column: Column, lines: readonly string[], leftMm: number, topMm: number): readonly PageItem[] {
  const { align, style, widthMm } = column;
  const x = leftMm + column.leftMm + (align === 'end' ? widthMm : 0);
  // Words and figures, whose letters are smaller, stand on the same line.
  const drop = baselineMm(pageStyle.texts.words) - baselineMm(style);
  return lines.map((line, i) => writeText(line, x, topMm + drop + linesHeightMm(style, i), style, align));
}

/** Sums under a line. Words take the place of empty neighbours on their right. */
function totalsPiece(laid: LaidTable, head: Piece['head']): Piece {
  const { total } = pageStyle.texts;
  const cells = laid.columns.map((column, i) => {
    const isWords = column.align === 'start';
    const widthMm = isWords ? freeWidth(laid, i) : column.widthMm;
    return { column, lines: cellLines(column.total, total, widthMm) };
  });
  const heightMm = linesHeightMm(total, Math.max(1, ...cells.map(({ lines }) => lines.length))) + 2 * padMm + 0.6;
  return {
    heightMm,
    spaceMm: 0,
    withNext: false,
    head,
    place: (leftMm, topMm) => [
      ruleLines([[leftMm, topMm, leftMm + laid.widthMm, topMm]], pageStyle.strokes.total),
      ...cells.flatMap(({ column, lines }) =>
        writeLines(
          lines,
          leftMm + column.leftMm + (column.align === 'end' ? column.widthMm : 0),
          topMm + padMm + 0.4,
          total,
          column.align,
        ),
      ),
    ],
  };
}

/** From the left edge of a column to the next sum. */
function freeWidth({ columns, widthMm, gapMm }: LaidTable, index: number): number {
  const next = columns.find((column, i) => i > index && column.total !== '');
  const until = next === undefined ? widthMm : next.leftMm - gapMm;
  return until - columns[index]!.leftMm;
}
