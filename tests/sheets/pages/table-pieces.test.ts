import { expect, test } from 'vitest';
import { measureTable } from '../../../src/sheets/pages/measure-table';
import { tablePieces } from '../../../src/sheets/pages/table-pieces';
import type { Cell } from '../../../src/sheets/schedule';
import { smallSchedule } from '../../files/small-schedule';
import { itemBox, outside, textsOf } from './page-boxes';
import { placed } from './placed';

const format = (value: number) => String(value);
const piecesOf = (
  rows: readonly (readonly Cell[])[],
  totals: readonly Cell[] | null,
  widthMm: number,
  boxes: readonly string[] = [],
) =>
  tablePieces(
    measureTable({ kind: 'table', title: 'Ports', schedule: smallSchedule(rows, totals), boxes }, format),
    widthMm,
  );
const row: readonly Cell[] = ['3B-04', 12, 1500, 7, 0.5];

test('tablePieces has a title with heads, a piece for each row and one for the sums', () => {
  const pieces = piecesOf([row, row], ['2 ports', 24, null, null, null], 170);
  expect(pieces).toHaveLength(4);
  const { items, heightMm } = placed(pieces);
  const texts = textsOf(items);
  expect(texts.slice(0, 6)).toEqual(['Ports', 'Item', 'Needed', 'Length', 'Price', 'Share']);
  expect(texts.filter((text) => text === '3B-04')).toHaveLength(2);
  expect(texts.slice(-2)).toEqual(['2 ports', '24']);
  expect(outside(items, { leftMm: 0, topMm: -0.2, rightMm: 170, bottomMm: heightMm + 0.2 })).toEqual([]);
});

test('tablePieces keeps the first row by the title and the last by the sums', () => {
  const pieces = piecesOf([row, row, row], [null, 36, null, null, null], 170);
  expect(pieces.map(({ withNext }) => withNext)).toEqual([true, false, false, true, false]);
});

test('tablePieces repeats title and heads, marked continued, where a row begins a page', () => {
  const [, first] = piecesOf([row], null, 170);
  expect(textsOf(first!.head!.place(0, 0)).slice(0, 2)).toEqual(['Ports, continued', 'Item']);
});

test('tablePieces ends figures on the right and begins words on the left', () => {
  const { items } = placed(piecesOf([row, ['A', 1, 20, 1, 1]], null, 170));
  const rights = items.flatMap((item) =>
    item.kind === 'text' && ['12', '1500'].includes(item.text) ? [itemBox(item).rightMm] : [],
  );
  const ones = items.flatMap((item) => (item.kind === 'text' && item.text === '20' ? [itemBox(item).rightMm] : []));
  expect(ones[0]).toBeCloseTo(rights[1]!, 6);
});

test('tablePieces leaves a box at the end of each row for every head of boxes', () => {
  const boxes = ['stands', 'wired', 'by'];
  const { items, heightMm } = placed(piecesOf([row, row], null, 170, boxes));
  const rectangles = items.filter(
    (item) => item.kind === 'path' && item.lines.closed && item.lines.ends.length === boxes.length,
  );
  expect(rectangles).toHaveLength(2);
  expect(textsOf(items)).toEqual(expect.arrayContaining(boxes));
  expect(outside(items, { leftMm: 0, topMm: -0.2, rightMm: 170, bottomMm: heightMm + 0.2 })).toEqual([]);
});

test('tablePieces breaks long names within their columns and loses nothing of them', () => {
  const name = 'x'.repeat(200);
  const { items, heightMm } = placed(piecesOf([[name, 12, 1500, 7, 0.5]], ['all '.repeat(60), 1, 1, 1, 1], 90));
  expect(textsOf(items).join('')).toContain(name);
  expect(outside(items, { leftMm: 0, topMm: -0.2, rightMm: 90, bottomMm: heightMm + 0.2 })).toEqual([]);
});

test('tablePieces tears a row that is higher than a page', () => {
  const pieces = piecesOf([['word '.repeat(800), 1, 1, 1, 1]], null, 90);
  expect(pieces.length).toBeGreaterThan(2);
  expect(Math.max(...pieces.map(({ heightMm }) => heightMm))).toBeLessThan(70);
  expect(textsOf(placed(pieces).items).join(' ').split('word')).toHaveLength(801);
});
