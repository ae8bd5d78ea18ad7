import { expect, test } from 'vitest';
import { measureTable } from '../../../src/sheets/pages/measure-table';
import { smallSchedule } from '../../files/small-schedule';

const format = (value: number, unit: string) => `${value} ${unit}`;

test('measureTable writes out cells, nothing for null, and keeps words of any column', () => {
  const schedule = smallSchedule(
    [
      ['Cable', 3, 1500, null, 0.5],
      ['Frame', 'as needed', 20, 7, null],
    ],
    ['2 items', 3, null, 7, null],
  );
  const { columns, rows, hasTotals, boxes } = measureTable(
    { kind: 'table', title: 'Bill', schedule, boxes: ['ok'] },
    format,
  );
  expect(columns.map(({ texts }) => texts)).toEqual([
    ['Cable', 'Frame'],
    ['3 count', 'as needed'],
    ['1500 mm', '20 mm'],
    ['', '7 money'],
    ['0.5 share', ''],
  ]);
  expect(columns.map(({ total }) => total)).toEqual(['2 items', '3 count', '', '7 money', '']);
  expect([rows, hasTotals, boxes]).toEqual([2, true, ['ok']]);
});

test('measureTable measures figures in the face of fixed width, and the widest word for the least width', () => {
  const schedule = smallSchedule([['long words in it', 123456789, null, null, null]]);
  const [words, count] = measureTable({ kind: 'table', title: '', schedule }, (value) => String(value)).columns;
  // Nine figures of 0.6 em at 2.6 mm.
  expect(count!.naturalMm).toBeCloseTo(9 * 0.6 * 2.6, 6);
  expect(count!.leastMm).toBeCloseTo(count!.naturalMm, 9);
  expect(words!.leastMm).toBeLessThan(words!.naturalMm / 2);
});
