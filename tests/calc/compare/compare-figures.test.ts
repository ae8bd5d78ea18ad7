import { expect, test } from 'vitest';
import { compareFigures } from '../../../src/calc/compare/compare-figures';
import { headline } from '../../cli/small-stage';

test('compareFigures is silent where none differs, and where the order of a sum is all that does', () => {
  // 0.1 + 0.2 is not 0.3 in binary.
  expect(0.1 + 0.2).not.toBe(0.3);
  expect(compareFigures({ ...headline, heatTons: 0.1 + 0.2 }, { ...headline, heatTons: 0.3 })).toEqual([]);
});

test('compareFigures lists a figure that differs, with its unit', () => {
  expect(compareFigures(headline, { ...headline, massKg: 18, panels: 3 })).toEqual([
    {
      kind: 'changed',
      what: 'figure',
      name: 'Panels',
      before: [{ value: 2, unit: 'count' }],
      after: [{ value: 3, unit: 'count' }],
    },
    {
      kind: 'changed',
      what: 'figure',
      name: 'Mass',
      before: [{ value: 17, unit: 'kg' }],
      after: [{ value: 18, unit: 'kg' }],
    },
  ]);
});

test('compareFigures lists a figure that was not known before, or no longer is', () => {
  const known = { ...headline, openingMm: 4000 };
  const side = [{ value: 4000, unit: 'mm' }];
  const opening = { kind: 'changed', what: 'figure', name: 'Opening' };
  expect(compareFigures(headline, known)).toEqual([{ ...opening, before: null, after: side }]);
  expect(compareFigures(known, headline)).toEqual([{ ...opening, before: side, after: null }]);
});

test('compareFigures tells zero from next to nothing', () => {
  expect(compareFigures({ ...headline, neutralA: 0 }, { ...headline, neutralA: 0 })).toEqual([]);
  expect(compareFigures({ ...headline, neutralA: 0 }, { ...headline, neutralA: 0.2 })).toHaveLength(1);
});
