import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packColumn, unpackColumn } from '../../src/files/packed-column';

describe('packColumn', () => {
  it('says a regular column as its first text, its step, and how often the step is taken again', () => {
    expect(packColumn(['3B-01', '3B-02', '3B-03', '3B-04'])).toEqual(['3B-01', [0, 1], 2]);
    expect(packColumn(['A C1 R1', 'A C2 R1', 'A C3 R1', 'A C3 R2'])).toEqual(['A C1 R1', [1, 0], 1, [0, 1]]);
  });
  it('begins anew where a text has another form, or its digits would not come back', () => {
    expect(packColumn(['1A-08', '1B-01', '1B-02'])).toEqual(['1A-08', '1B-01', [0, 1]]);
    expect(packColumn(['9', '10', '09', '10'])).toEqual(['9', [1], '09', [1]]);
    expect(packColumn(['a', 'a'])).toEqual(['a', 'a']);
    expect(packColumn([])).toEqual([]);
  });
  it('comes back as it was, whatever stands in it', () => {
    const text = fc.oneof(
      fc.string(),
      fc.stringMatching(/^[A-C]? ?C\d{1,3} R0?\d{1,2}$/),
      fc.stringMatching(/^\d{1,2}[AB]-\d\d$/),
      fc.stringMatching(/^\d{1,24}$/),
      fc.constantFrom('', '0', '00', '-1', '1 -2', '999999999', '1000000000'),
    );
    fc.assert(
      fc.property(fc.array(text, { maxLength: 40 }), (texts) => {
        expect(unpackColumn(JSON.parse(JSON.stringify(packColumn(texts))))).toEqual(texts);
      }),
      { numRuns: 500 },
    );
  });
});

describe('unpackColumn', () => {
  it.each([
    [null],
    ['1A-01'],
    [{ 0: 'a' }],
    [[[1]]],
    [[3]],
    [['a', 1]],
    [['1', [1, 2]]],
    [['1', []]],
    [['1', [1], 0]],
    [['1', [1], -1]],
    [['1', [1], 1.5]],
    [['1', [-2]]],
    [['1', ['1']]],
    [['1', [null]]],
    [['1', true]],
    [['1', [0], 250_000]],
  ])('knows no column in %j', (packed) => {
    expect(unpackColumn(packed)).toBeNull();
  });
  it('takes no longer column than any list of a plan is', () => {
    expect(unpackColumn(['1', [0], 249_998])).toHaveLength(250_000);
  });
});
