import { expect, test } from 'vitest';
import { estimateCable } from '../../../../src/calc/runs/search/estimate-cable';
import { block } from './block-of-panels';

const list = { order: Int32Array.from([1, 2, 5, 4]), start: Int32Array.from([0, 4]), ports: 1 };
const grid = { ...block(3, 3), columnPitchMm: 500, rowPitchMm: 1000 };

test('estimateCable adds jumpers and the way home: down to the lowest row, along it to the middle column', () => {
  // Entry in column 0, row 1: one column to the middle of three, one row down. Jumpers: up, across, down.
  expect(estimateCable(grid, list, false, 0)).toBe(500 + 1000 + 1000 + 500 + 1000);
  expect(estimateCable(grid, list, false, 1)).toBe(500 + 1000 + 500 + 1000);
});

test('estimateCable with returns has the last panel lead home too', () => {
  // The last panel stands in the middle column, one row up.
  expect(estimateCable(grid, list, true, 0)).toBe(4000 + 1000);
});
