import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutStrips } from '../../src/sheets/cut-strips';

describe('cutStrips', () => {
  it('covers every column once, in order', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 30 }),
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 400, maxLength: 400 }),
        (columns, count, costs) => {
          const strips = cutStrips(columns, count, 'inside', (column) => costs[column - 1]!);
          expect(
            strips.flatMap((strip) => Array.from({ length: strip.columns }, (_, k) => strip.firstColumn + k)),
          ).toEqual(Array.from({ length: columns }, (_, k) => k + 1));
        },
      ),
    );
  });
  it('cuts at a zone border near the even cut', () => {
    // 40 columns in two: the even cut is after 20; borders after 13, 22 and 30, and only 22 is within a quarter strip.
    const cost = (column: number) => ([13, 22, 30].includes(column) ? 0 : 1);
    expect(cutStrips(40, 2, 'inside', cost)).toEqual([
      { firstColumn: 1, columns: 22 },
      { firstColumn: 23, columns: 18 },
    ]);
  });
  it('begins with the highest columns from behind, so that the strips follow on each other from left to right', () => {
    expect(cutStrips(6, 2, 'behind', () => 1)).toEqual([
      { firstColumn: 4, columns: 3 },
      { firstColumn: 1, columns: 3 },
    ]);
  });
  it('makes no empty strips where there are fewer columns', () => {
    expect(cutStrips(2, 5, 'inside', () => 0)).toHaveLength(2);
  });
  it('keeps every strip as narrow as asked, whatever a cut costs', () => {
    // Three strips of 20 columns: about 7 each, a quarter more or less. The only cheap cut is after column 8.
    const costOf = (column: number) => (column === 8 ? 0 : 3);
    expect(cutStrips(20, 3, 'inside', costOf)[0]!.columns).toBe(8);
    expect(cutStrips(20, 3, 'inside', costOf, 7).map(({ columns }) => columns)).toEqual([7, 7, 6]);
  });
});
