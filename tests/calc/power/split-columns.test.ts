import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitColumns } from '../../../src/calc/power/split-columns';

const alike = (columns: number, each = 1) => new Float64Array(columns).fill(each);

describe('splitColumns', () => {
  it('20 columns, 6 to a block: four blocks of 5, not 6 6 6 2', () => {
    expect(splitColumns(alike(20), 0, 20, 6)).toEqual([0, 5, 10, 15]);
  });

  it('136 columns, 12 to a block: eleven of 12 and the odd one at the end', () => {
    expect(splitColumns(alike(136), 0, 136, 12)).toEqual(Array.from({ length: 12 }, (_, i) => i * 12));
  });

  it('one column a block where no two fit, also above the limit', () => {
    expect(splitColumns(alike(3), 0, 3, 1.5)).toEqual([0, 1, 2]);
    expect(splitColumns(alike(3), 0, 3, 0.5)).toEqual([0, 1, 2]);
  });

  it('splits only the columns asked for', () => {
    expect(splitColumns(alike(10), 4, 9, 2)).toEqual([4, 6, 8]);
    expect(splitColumns(alike(10), 4, 4, 2)).toEqual([]);
  });

  it('keeps 4 x 4.3 within 17.2 although the float sum is larger', () => {
    expect(splitColumns(alike(8, 4.3), 0, 8, 17.2)).toEqual([0, 4]);
  });

  it('takes the fewest blocks (greedy from the left is optimal) and none above the limit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 60 }), (amps) => {
        const starts = splitColumns(Float64Array.from(amps), 0, amps.length, 12);
        let greedy = 0;
        let room = -1;
        for (const a of amps) {
          if (a > room) {
            greedy++;
            room = 12;
          }
          room -= a;
        }
        expect(starts.length).toBe(greedy);
        starts.forEach((from, i) => {
          expect(amps.slice(from, starts[i + 1]).reduce((a, b) => a + b)).toBeLessThanOrEqual(12);
        });
      }),
    );
  });
});
