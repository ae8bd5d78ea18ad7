import { expect, test } from 'vitest';
import { wholeCells } from '../../../src/calc/links/whole-cells';

test('wholeCells is the next multiple of eight pixels', () => {
  expect([1, 8, 9, 2808, 2809].map(wholeCells)).toEqual([8, 8, 16, 2808, 2816]);
});
