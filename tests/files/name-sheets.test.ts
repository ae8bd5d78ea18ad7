import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nameSheets } from '../../src/files/name-sheets';

test('nameSheets leaves out the signs that no sheet may have', () => {
  expect(nameSheets(['Runs: wall A/B', "'Bill'", '[?]', ''])).toEqual(['Runs wall A B', 'Bill', 'Sheet', 'Sheet 2']);
});

test('nameSheets tells equal titles apart, whatever the case and however long', () => {
  const long = 'A title of more than thirty-one characters';
  expect(nameSheets(['Bill', 'bill', 'Bill'])).toEqual(['Bill', 'bill 2', 'Bill 3']);
  expect(nameSheets([long, long])).toEqual(['A title of more than thirty-one', 'A title of more than thirty-o 2']);
});

// What a spreadsheet program refuses, as write-excel-file checks it: empty, above 31 characters, []/\:*?; and equal names.
test('nameSheets gives names that every spreadsheet takes, whatever the titles', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ maxLength: 60 }), { maxLength: 20 }), (titles) => {
      const names = nameSheets(titles);
      expect(names).toHaveLength(titles.length);
      expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(titles.length);
      for (const name of names) {
        expect(name.length).toBeGreaterThan(0);
        expect(name.length).toBeLessThanOrEqual(31);
        expect(name).not.toMatch(/[[\]/\\:*?]|^'|'$/);
      }
    }),
  );
});
