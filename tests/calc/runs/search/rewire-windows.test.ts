import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PathCover } from '../../../../src/calc/runs/search/path-cover';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { rewireWindows } from '../../../../src/calc/runs/search/rewire-windows';
import { aPort, block } from './block-of-panels';

/** Every cell a chain of its own. */
const singles = (size: number) => ({
  order: Int32Array.from(Array(size).keys()),
  start: Int32Array.from(Array(size + 1).keys()),
});

test('rewireWindows covers every cell once, overloads nothing, and is no worse in ends above reach, then in chains', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.constantFrom<('panels' | 'rectangle')[]>('panels', 'rectangle'),
      fc.boolean(),
      fc.integer({ min: 2, max: 5 }),
      fc.integer({ min: 0, max: 6 }),
      (seed, counting, lastObeysReach, panels, rows) => {
        const limits = { ...aPort(panels, counting, rows * 500 + 100), lastObeysReach };
        const places = Array.from(Array(56).keys()).filter((place) => (seed + place) % 9 > 0);
        const region = regionOf(block(8, 7), limits, Int32Array.from(places));
        const before = new PathCover(region, singles(region.size));
        const chains = rewireWindows(region, singles(region.size), 20_000, createRandomBits(seed));
        const after = new PathCover(region, chains);
        expect([...chains.order].sort((a, b) => a - b)).toEqual([...singles(region.size).order]);
        expect(after.overloaded).toBe(0);
        expect(after.high - before.high || after.chains - before.chains).toBeLessThanOrEqual(0);
      },
    ),
    { numRuns: 30 },
  );
});

test('rewireWindows joins most of what straight runs leave over: 14 x 12 panels, 4 to a port, are 48 runs along rows and need no more than 42', () => {
  const size = 14 * 12;
  // Places count up the columns; a row of 14 is cut into 4, 4, 4 and 2.
  const order = Int32Array.from({ length: size }, (_, i) => (i % 14) * 12 + Math.floor(i / 14));
  const start = [0];
  for (let row = 0; row < 12; row++) for (const run of [4, 4, 4, 2]) start.push(start.at(-1)! + run);
  const region = regionOf(block(14, 12), aPort(4, 'panels', 1e6), Int32Array.from(Array(size).keys()));
  const runs = (states: number) =>
    rewireWindows(region, { order, start: Int32Array.from(start) }, states, createRandomBits(1)).start.length - 1;
  expect(runs(0)).toBe(48);
  const after = runs(400_000);
  expect(after).toBeGreaterThanOrEqual(42);
  expect(after).toBeLessThanOrEqual(44);
});
