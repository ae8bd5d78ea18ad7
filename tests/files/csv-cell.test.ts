import { expect, test } from 'vitest';
import { csvCell, csvWords } from '../../src/files/csv-cell';

test('csvCell writes figures plain, nothing for null or what is no number, and words as they are', () => {
  expect([0.1 + 0.2, -3, null, Number.NaN, 'A C1'].map(csvCell)).toEqual(['0.3', '-3', '', '', 'A C1']);
});

test('csvWords sets an apostrophe before what a spreadsheet would take for a formula', () => {
  // OWASP, CSV Injection: =, +, -, @, tab and carriage return.
  expect(['=1', '+1', '-1', '@a', '\ta', '\ra', 'a=1'].map(csvWords)).toEqual([
    "'=1",
    "'+1",
    "'-1",
    "'@a",
    "'\ta",
    "'\ra",
    'a=1',
  ]);
});
