import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastChains, mostOnARun } from '../../../../../src/calc/runs/search/bounds/least-chains';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

const of = (grid: ReturnType<typeof block>, limits: ReturnType<typeof aPort>, high = Number.POSITIVE_INFINITY) =>
  leastChains(makeReady(grid, limits).region, high);

test('leastChains of 13 x 13 panels is 169 over a port, rounded up', () => {
  expect([of(block(13, 13), aPort(10)), of(block(13, 13), aPort(11))]).toEqual([17, 16]);
});

test('leastChains counts runs that cannot be full: a chessboard has one colour more', () => {
  // 3 x 3: five of one colour, four of the other. Runs of two hold one of each, so one run is a panel alone: 4 + 1.
  expect(of(block(3, 3), aPort(2))).toBe(5);
});

test('leastChains counts what is spent on the way up and back, where both ends must be in reach', () => {
  // Four columns of five, only row 0 in reach, eight panels a port. A run up to row 3 spends three panels before it and three
  // behind: two of its eight are left for the eight panels of rows 3 and 4. Without returns 20 / 8 is what counts.
  const limits = aPort(8, 'panels', 100);
  expect(of(block(4, 5), { ...limits, lastObeysReach: true }, 0)).toBe(4);
  expect(of(block(4, 5), limits, 0)).toBe(3);
});

test('leastChains counts what no run can pass: a row of five with a tooth at both ends and in the middle takes two runs', () => {
  const comb = block(5, 2, (place) => place % 2 === 0 || Math.floor(place / 2) % 2 === 0);
  expect(of(comb, aPort(100))).toBe(2);
});

test('mostOnARun is what pixels, panels and the rectangle allow', () => {
  const most = (...args: Parameters<typeof aPort>) => mostOnARun(makeReady(block(5, 5), aPort(...args)).region);
  expect(most(7)).toEqual({ pixels: 7 * 216 * 216, panels: 7 });
  expect(most(7, 'rectangle')).toEqual({ pixels: 6 * 216 * 216, panels: 6 });
});

test('leastChains is never above what trying all finds with as few entries above reach', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      const { high, ports } = leastByTrying(grid, limits);
      expect(leastChains(region, high)).toBeLessThanOrEqual(ports);
    }),
    { numRuns: 60 },
  );
});
