import { expect, test } from 'vitest';
import { alignColumns } from '../../src/cli/align-columns';

test('alignColumns sets words to the left and figures to the right, two spaces apart', () => {
  const rows = [
    ['Panels', '1,768', 'pieces'],
    ['Processors', '11', ''],
  ];
  expect(alignColumns(rows, ['l', 'r', 'l'])).toEqual(['Panels      1,768  pieces', 'Processors     11']);
});

test('alignColumns leaves no space at the end of a line, and takes a row that is short', () => {
  expect(alignColumns([['a', 'long'], ['b']], ['l', 'l'])).toEqual(['a  long', 'b']);
});

test('alignColumns of no rows is no lines', () => {
  expect(alignColumns([], ['l'])).toEqual([]);
});

test('alignColumns takes as many rows as a plan has panels at most', () => {
  const rows = Array.from({ length: 250_000 }, () => ['x']);
  expect(alignColumns(rows, ['l'])).toHaveLength(250_000);
});
