import { expect, test } from 'vitest';
import { rowMove } from '../../../src/ui/widgets/row-move';

test.each([
  ['ArrowDown', 5, 6],
  ['ArrowUp', 5, 4],
  ['ArrowUp', 0, 0],
  ['ArrowDown', 99, 99],
  ['PageDown', 5, 15],
  ['PageDown', 95, 99],
  ['PageUp', 5, 0],
  ['Home', 5, 0],
  ['End', 5, 99],
  ['Enter', 5, null],
  ['toString', 5, null],
] as const)('rowMove of %s from %s leads to %s', (key, from, to) => {
  expect(rowMove(key, from, 100, 10)).toBe(to);
});

test('rowMove without rows leads nowhere', () => {
  expect(rowMove('ArrowDown', 0, 0, 10)).toBeNull();
});
