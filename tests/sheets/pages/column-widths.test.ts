import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnWidths, easyWidthMm } from '../../../src/sheets/pages/column-widths';
import type { MeasuredTable } from '../../../src/sheets/pages/measure-table';

const table = (columns: readonly (readonly [leastMm: number, naturalMm: number])[], boxes = 0): MeasuredTable => ({
  title: '',
  columns: columns.map(([leastMm, naturalMm]) => ({
    title: '',
    align: 'start',
    style: { face: 'sans', sizeMm: 3, colour: '#000000' },
    texts: [],
    total: '',
    naturalMm,
    leastMm,
  })),
  boxes: Array.from({ length: boxes }, () => 'box'),
  rows: 0,
  hasTotals: false,
});

test('columnWidths gives every column what it needs and some ease where there is room', () => {
  const { columnsMm, gapMm, totalMm } = columnWidths(
    table([
      [5, 20],
      [5, 40],
    ]),
    200,
  );
  expect(columnsMm[0]).toBeGreaterThan(20);
  expect(columnsMm[1]! - columnsMm[0]!).toBeCloseTo(20, 9);
  expect(totalMm).toBeCloseTo(columnsMm[0]! + columnsMm[1]! + gapMm, 9);
});

test('columnWidths breaks the widest words first, and none below its widest word', () => {
  const { columnsMm, totalMm } = columnWidths(
    table([
      [10, 20],
      [30, 200],
      [10, 100],
    ]),
    150,
  );
  expect(columnsMm[0]).toBe(20);
  expect(columnsMm[1]).toBeCloseTo(columnsMm[2]!, 6);
  expect(totalMm).toBeCloseTo(150, 6);
});

test('columnWidths never takes more than the room, whatever the columns', () => {
  const column = fc
    .tuple(fc.double({ min: 1, max: 80, noNaN: true }), fc.double({ min: 1, max: 300, noNaN: true }))
    .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  fc.assert(
    fc.property(
      fc.array(column, { minLength: 1, maxLength: 16 }),
      fc.nat(6),
      fc.double({ min: 84, max: 400, noNaN: true }),
      (columns, boxes, room) => {
        const { totalMm, columnsMm } = columnWidths(table(columns, boxes), room);
        expect(totalMm).toBeLessThanOrEqual(room + 1e-6);
        for (const width of columnsMm) expect(width).toBeGreaterThan(0);
      },
    ),
  );
});

test('easyWidthMm asks for no more than a few lines of words', () => {
  expect(
    easyWidthMm(
      table([
        [5, 20],
        [5, 20],
      ]),
    ),
  ).toBeCloseTo(43, 9);
  expect(
    easyWidthMm(
      table([
        [5, 20],
        [5, 500],
      ]),
    ),
  ).toBeLessThan(100);
  expect(easyWidthMm(table([[5, 20]], 2))).toBeCloseTo(46, 9);
});

test('columnWidths lets a table to write into reach across its room, so that boxes stand under each other', () => {
  const narrow = columnWidths(table([[5, 20]], 2), 170);
  const wide = columnWidths(table([[5, 90]], 2), 170);
  expect([narrow.totalMm, wide.totalMm]).toEqual([expect.closeTo(170, 6), expect.closeTo(170, 6)]);
  expect(narrow.boxMm).toBeCloseTo(wide.boxMm, 6);
  expect(narrow.boxMm).toBeGreaterThan(20);
});
