import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitFields } from '../../../../src/calc/runs/existing/split-fields';

test('splitFields takes space round a field away and keeps an empty one', () => {
  expect(splitFields(' A C1 R1 , 3B-04,, 7 ', ',')).toEqual(['A C1 R1', '3B-04', '', '7']);
  expect(splitFields('a;b,c', ';')).toEqual(['a', 'b,c']);
});

test('splitFields reads quoted fields with separators and doubled quotation marks', () => {
  expect(splitFields('"a, b", "say ""x""" ,c', ',')).toEqual(['a, b', 'say "x"', 'c']);
});

test('splitFields is null where a quotation mark stays open', () => {
  expect(splitFields('a,"b,c', ',')).toBeNull();
  expect(splitFields('"a""', ',')).toBeNull();
});

// The general-purpose library d3-dsv reads the same fields from any line that RFC 4180 allows.
test('splitFields agrees with an outside reader', () => {
  const field = fc.stringMatching(/^[a-c ,;"]{0,6}$/);
  const written = (text: string) => (/[,"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  fc.assert(
    fc.property(fc.array(field, { minLength: 1, maxLength: 5 }), (fields) => {
      const line = fields.map(written).join(',');
      fc.pre(line !== '');
      expect(splitFields(line, ',')).toEqual(csvParseRows(line)[0]!.map((text) => text.trim()));
    }),
  );
});
