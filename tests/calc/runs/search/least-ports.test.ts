import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { leastPorts } from '../../../../src/calc/runs/search/least-ports';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { aPort, block } from './block-of-panels';
import { leastByProgram } from './least-by-program';

test('leastPorts of a block is its panels over a port, rounded up; of nothing it is none', () => {
  // 169 / 10 and 169 / 11.
  expect(leastPorts(block(13, 13), aPort(10))).toBe(17);
  expect(leastPorts(block(13, 13), aPort(11))).toBe(16);
  expect(
    leastPorts(
      block(3, 3, () => false),
      aPort(4),
    ),
  ).toBe(0);
});

test('leastPorts counts parts that do not touch each for itself', () => {
  // Two columns of 3 with an empty one between, 4 panels a port: 6 / 4 is 2 in any case, with 5 to a port the parts make it 2.
  const apart = block(3, 3, (place) => place < 3 || place > 5);
  expect(leastPorts(apart, aPort(5))).toBe(2);
  expect(leastPorts(apart, aPort(6))).toBe(2);
});

test('leastPorts is never above the optimum of an integer program (HiGHS)', async () => {
  const highs = await loadHighs();
  const bits = createRandomBits(3);
  for (let zone = 0; zone < 25; zone++) {
    const grid = block(2 + (bits() % 3), 2 + (bits() % 4), () => bits() % 8 > 0);
    const limits = aPort(2 + (bits() % 5), zone % 2 === 0 ? 'panels' : 'rectangle', Number.POSITIVE_INFINITY);
    if (!grid.present.includes(1)) continue;
    expect(leastPorts(grid, limits)).toBeLessThanOrEqual(leastByProgram(highs, grid, limits).ports);
  }
});
