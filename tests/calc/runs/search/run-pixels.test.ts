import { expect, test } from 'vitest';
import { runPixels } from '../../../../src/calc/runs/search/run-pixels';
import { aPort, block } from './block-of-panels';

const panel = 216 * 216;

test('runPixels adds up panels, or takes the rectangle that encloses them', () => {
  // An L of three panels: up from the floor and one to the right.
  const order = Int32Array.from([5, 0, 1, 4]);
  expect(runPixels(block(2, 3), aPort(9), order, 1, 4)).toBe(3 * panel);
  expect(runPixels(block(2, 3), aPort(9, 'rectangle'), order, 1, 4)).toBe(4 * panel);
});

test('runPixels of no panel is 0', () => {
  for (const counting of ['panels', 'rectangle'] as const) {
    expect(runPixels(block(2, 3), aPort(9, counting), Int32Array.from([0]), 1, 1)).toBe(0);
  }
});
