import fc from 'fast-check';
import readWorkbook, { readSheet } from 'read-excel-file/node';
import { afterEach, expect, test, vi } from 'vitest';
import { schedulesToXlsx } from '../../src/files/schedules-to-xlsx';
import type { Schedule } from '../../src/sheets/schedule';
import { smallSchedule } from './small-schedule';
import { workbookPart } from './workbook-part';

const write = async (...schedules: [Schedule, ...Schedule[]]) => Buffer.from(await schedulesToXlsx(schedules, 'EUR'));
const readBack = async (schedule: Schedule) => readSheet(await write(schedule));

afterEach(() => vi.useRealTimers());

test('schedulesToXlsx is read back by another reader: heading, words, figures, totals', async () => {
  const rows = [
    ['Panel', 12, 500.5, 1890.25, 0.5],
    ['Port', 3, null, null, 0.25],
  ];
  expect(await readBack(smallSchedule(rows, ['All', 15, null, 1890.25, null]))).toEqual([
    ['Item', 'Needed', 'Length (mm)', 'Price (EUR)', 'Share'],
    ['Panel', 12, 500.5, 1890.25, 0.5],
    ['Port', 3, null, null, 0.25],
    ['All', 15, null, 1890.25, null],
  ]);
});

test('schedulesToXlsx gives each schedule a sheet, in their order, under its title', async () => {
  const other = { ...smallSchedule([]), title: 'Runs: A/B' };
  const sheets = await readWorkbook(await write(smallSchedule([['x', 1, 2, 3, 0]]), other));
  expect(sheets.map((sheet) => sheet.sheet)).toEqual(['Small', 'Runs A B']);
});

test('schedulesToXlsx keeps words that look like a formula words', async () => {
  expect((await readBack(smallSchedule([['=1+1', 1, 0, 0, 0]])))[1]?.[0]).toBe('=1+1');
  expect(workbookPart(await write(smallSchedule([['=1+1', 1, 0, 0, 0]])), 'xl/worksheets/sheet1.xml')).not.toContain(
    '<f>',
  );
});

test('schedulesToXlsx leaves a cell empty that holds no number', async () => {
  expect((await readBack(smallSchedule([['x', Number.NaN, 1 / 0, 0.1 + 0.2, 0]])))[1]).toEqual([
    'x',
    null,
    null,
    0.3,
    0,
  ]);
});

test('schedulesToXlsx gives back the words of any plan, and leaves out only what XML cannot carry', async () => {
  // A reader trims words and takes empty ones for nothing; carriage returns become line feeds in any XML.
  const words = fc
    .oneof(
      fc.string(),
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('_x0041_', 'valueOf', '__proto__', '<a & "b">', 'a\u0007b', '²°€✓'),
    )
    .filter((text) => text.trim() === text && text !== '' && !text.includes('\r') && Number.isNaN(Number(text)));
  await fc.assert(
    fc.asyncProperty(fc.array(words, { minLength: 1, maxLength: 10 }), async (names) => {
      const rows = await readBack(smallSchedule(names.map((name) => [name, 1, 2, 3, 0])));
      const kept = names.map((name) => name.replaceAll('\u0007', ''));
      expect(rows.slice(1).map((row) => row[0])).toEqual(kept);
    }),
    { numRuns: 50 },
  );
});

test('schedulesToXlsx keeps the heading in view and shows money and shares as such', async () => {
  const workbook = await write(smallSchedule([['x', 1, 2, 3, 0.5]]));
  const sheet = workbookPart(workbook, 'xl/worksheets/sheet1.xml');
  expect(sheet).toMatch(/<pane[^>]*ySplit="1"[^>]*state="frozen"/);
  const styles = workbookPart(workbook, 'xl/styles.xml');
  expect(styles).toContain('formatCode="0.0%"');
  expect(styles).toContain('<b/>');
});

test('schedulesToXlsx gives the same bytes on another day', async () => {
  const schedule = smallSchedule([['Panel', 12, 500.5, 1890.25, 0.5]]);
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-01-02T10:20:30Z') });
  const first = await write(schedule);
  vi.setSystemTime(new Date('2031-07-08T01:02:04Z'));
  expect((await write(schedule)).equals(first)).toBe(true);
});

test('schedulesToXlsx writes 20,000 rows', async () => {
  const row = ['Panel', 1, 500, 1800, 0.5];
  const large: Schedule = { ...smallSchedule([]), count: 20_000, row: () => row };
  expect(await readBack(large)).toHaveLength(20_001);
});
