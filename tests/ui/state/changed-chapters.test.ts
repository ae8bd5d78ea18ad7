import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import { changedChapters } from '../../../src/ui/state/changed-chapters';

const first = { walls: { a: 1 }, power: { b: 1 }, checks: [] } as unknown as Evaluation;

test('changedChapters without a last evaluation gives all of it', () => {
  expect(changedChapters(null, first)).toBe(first);
});

test('changedChapters names only what is not the same object', () => {
  const next = { ...first, power: { b: 1 } } as unknown as Evaluation;
  expect(Object.keys(changedChapters(first, next))).toEqual(['power']);
  expect(changedChapters(first, { ...first })).toEqual({});
});
