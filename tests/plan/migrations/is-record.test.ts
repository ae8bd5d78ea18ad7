import { expect, test } from 'vitest';
import { isRecord } from '../../../src/plan/migrations/is-record';

test('isRecord takes records alone: no list, no null, no plain value', () => {
  expect([{}, { a: 1 }].map(isRecord)).toEqual([true, true]);
  expect([null, [], 'x', 1, undefined, true].some(isRecord)).toBe(false);
});
