import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scheduleToCsv } from '../../src/files/schedule-to-csv';
import { smallSchedule } from './small-schedule';

/** Read by a reader that knows nothing of how the file was written. */
const read = (csv: string) => csvParseRows(csv.replace(/^\ufeff/, ''));

test('scheduleToCsv writes heading, rows and totals, each line ended as RFC 4180 asks', () => {
  const csv = scheduleToCsv(
    smallSchedule([['Panel', 12, 500.5, 1890.25, 0.5]], ['All', null, null, 1890.25, null]),
    'EUR',
  );
  expect(csv).toBe(
    '\ufeffItem,Needed,Length (mm),Price (EUR),Share\r\nPanel,12,500.5,1890.25,0.5\r\nAll,,,1890.25,\r\n',
  );
});

test('scheduleToCsv begins with a byte-order mark: EF BB BF in UTF-8', () => {
  const bytes = new TextEncoder().encode(scheduleToCsv(smallSchedule([]), 'EUR'));
  expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
});

test('scheduleToCsv keeps commas, quotes and line breaks inside a cell', () => {
  const name = 'Panel, "tall"\nsecond line';
  expect(read(scheduleToCsv(smallSchedule([[name, 1, 0, 0, 0]]), 'EUR'))[1]?.[0]).toBe(name);
});

test.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx', '＝1'])('scheduleToCsv makes %j no formula', (name) => {
  expect(read(scheduleToCsv(smallSchedule([[name, 1, 0, 0, 0]]), 'EUR'))[1]?.[0]).toBe(`'${name}`);
});

test('scheduleToCsv leaves a negative figure a figure', () => {
  expect(read(scheduleToCsv(smallSchedule([['x', -2, -0.5, 0, 0]]), 'EUR'))[1]).toEqual(['x', '-2', '-0.5', '0', '0']);
});

test('scheduleToCsv leaves a cell empty that holds nothing or no number', () => {
  expect(read(scheduleToCsv(smallSchedule([[null, null, Number.NaN, 1 / 0, 0]]), 'EUR'))[1]).toEqual([
    '',
    '',
    '',
    '',
    '0',
  ]);
});

test('scheduleToCsv gives back every word and figure to whoever reads it', () => {
  const words = fc.string().filter((text) => !/^[=+\-@\t\r\n＝＋－＠]/.test(text) && !/[\r\ufeff]/.test(text));
  const figure = fc.integer({ min: -1e9, max: 1e9 });
  fc.assert(
    fc.property(fc.array(fc.tuple(words, figure, figure, figure, figure), { minLength: 1 }), (rows) => {
      expect(read(scheduleToCsv(smallSchedule(rows), 'EUR')).slice(1)).toEqual(rows.map((row) => row.map(String)));
    }),
  );
});
