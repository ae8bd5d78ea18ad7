import { expect, test } from 'vitest';
import { keepDark } from '../../../src/ui/state/keep-dark';
import { fakeEvaluation, somePlan } from './fake-bench';

const wide = fakeEvaluation(somePlan, 12).surfaces;
const narrow = fakeEvaluation(somePlan, 4).surfaces;

test('keepDark finds panels again by their names and drops those that are gone', () => {
  // C3 R2 is panel 13 of either; C5 R1, panel 24, is not on the wall of 4 columns.
  expect(keepDark([13, 24], wide, narrow)).toEqual([13]);
});

test('keepDark of the same stage, or of the first, leaves the list as it is', () => {
  const dark = [1, 2];
  expect(keepDark(dark, wide, wide)).toBe(dark);
  expect(keepDark(dark, undefined, wide)).toBe(dark);
});
