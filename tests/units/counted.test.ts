import { expect, test } from 'vitest';
import { counted } from '../../src/units/counted';

test('counted writes one alone in the singular', () => {
  expect([0, 1, 2].map((count) => counted(count, 'column'))).toEqual(['0 columns', '1 column', '2 columns']);
});

test('counted takes a plural of its own', () => {
  expect([1, 3].map((count) => counted(count, 'change by hand', 'changes by hand'))).toEqual([
    '1 change by hand',
    '3 changes by hand',
  ]);
});
