import { expect, test } from 'vitest';
import type { Check } from '../../../src/calc/chapter';
import { sayCheck } from '../../../src/calc/compare/say-check';

const check: Check = {
  id: 'walls.room',
  chapter: 'walls',
  severity: 'watch',
  measured: 900,
  limit: 1200,
  unit: 'mm',
  where: [],
  sentence: '{measured} are left of {limit} over {columns}.',
  values: { columns: { value: 7, unit: 'count' } },
};

test('sayCheck keeps the figures of a sentence apart from its words', () => {
  expect(sayCheck(check)).toEqual([
    'watch: ',
    '',
    { value: 900, unit: 'mm' },
    ' are left of ',
    { value: 1200, unit: 'mm' },
    ' over ',
    { value: 7, unit: 'count' },
    '.',
  ]);
});

test('sayCheck says which figure is not known and which limit nobody stated', () => {
  const words = sayCheck({ ...check, measured: null, limit: null });
  expect(words).toContain('not known');
  expect(words).toContain('not stated');
});

test('sayCheck leaves a token that names nothing as it stands', () => {
  const { values: _, ...without } = check;
  expect(sayCheck(without)).toContain('{columns}');
  expect(sayCheck({ ...check, sentence: 'A {toString}.' })).toContain('{toString}');
});
