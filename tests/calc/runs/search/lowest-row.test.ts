import { expect, test } from 'vitest';
import { lowestRow } from '../../../../src/calc/runs/search/lowest-row';
import { block } from './block-of-panels';

test('lowestRow is the lowest row with a panel in any column, the number of rows where there is none', () => {
  expect(lowestRow(block(3, 4))).toBe(0);
  expect(lowestRow(block(3, 4, (place) => place === 3 || place === 6))).toBe(2);
  expect(lowestRow(block(3, 4, () => false))).toBe(4);
});
