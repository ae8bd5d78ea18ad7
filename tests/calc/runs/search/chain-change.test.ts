import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ChainChange } from '../../../../src/calc/runs/search/chain-change';
import { PathCover } from '../../../../src/calc/runs/search/path-cover';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

const region = (counting: 'panels' | 'rectangle' = 'panels', lastObeysReach = false) =>
  regionOf(block(4, 4), { ...aPort(5, counting, 600), lastObeysReach }, Int32Array.from(Array(16).keys()));

/** Bends of all chains, counted on their list. */
function bendsOf(cover: PathCover): number {
  const { order, start } = cover.read();
  const { column, row } = cover.region;
  let bends = 0;
  for (let chain = 0; chain + 1 < start.length; chain++) {
    for (let at = start[chain]! + 1; at + 1 < start[chain + 1]!; at++) {
      const [before, cell, after] = [order[at - 1]!, order[at]!, order[at + 1]!];
      const straight =
        column[before]! + column[after]! === 2 * column[cell]! && row[before]! + row[after]! === 2 * row[cell]!;
      if (!straight) bends++;
    }
  }
  return bends;
}

test('ChainChange: what a change was weighed at is what it comes to, counted afresh', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1 }),
      fc.constantFrom<'panels' | 'rectangle'>('panels', 'rectangle'),
      fc.boolean(),
      fc.boolean(),
      (seed, counting, lastObeysReach, joining) => {
        const start = { order: Int32Array.from(Array(16).keys()), start: Int32Array.from([0, 4, 8, 10, 12, 16]) };
        const cover = new PathCover(region(counting, lastObeysReach), start);
        const change = new ChainChange(cover);
        const bits = createRandomBits(seed);
        for (let step = 0; step < 60; step++) {
          const random = bits();
          const chain = (random >>> 6) % cover.chains;
          const from = (random & 1) === 0 ? cover.endA[chain]! : cover.endB[chain]!;
          const to = cover.region.neighbours[from * 4 + ((random >>> 1) & 3)]!;
          const before = { excess: cover.excess, high: cover.high, bends: bendsOf(cover), chains: cover.chains };
          if (to < 0 || !change.propose(from, to, (random & 8) !== 0, joining)) continue;
          change.commit();
          const afresh = new PathCover(cover.region, cover.read());
          expect(cover.high).toBe(afresh.high);
          expect(cover.overloaded).toBe(afresh.overloaded);
          expect(cover.excess).toBeCloseTo(afresh.excess, 9);
          expect(cover.high - before.high).toBe(change.high);
          expect(bendsOf(cover) - before.bends).toBe(change.bends);
          // What a join overloads does not weigh.
          if (cover.chains === before.chains) expect(cover.excess - before.excess).toBeCloseTo(change.excess, 9);
          expect([...cover.read().order].sort((a, b) => a - b)).toEqual(Array.from(Array(16).keys()));
        }
      },
    ),
    { numRuns: 60 },
  );
});

test('ChainChange proposes nothing where the two are linked already', () => {
  const cover = new PathCover(region(), { order: Int32Array.from([0, 1, 2, 3]), start: Int32Array.from([0, 4]) });
  expect(new ChainChange(cover).propose(0, 1, false, false)).toBe(false);
});

test('ChainChange tells the ends there will be', () => {
  // Up column 0 and up column 1; the top of the first is led on to the top of the second, which stays behind without it.
  const start = { order: Int32Array.from(Array(16).keys()), start: Int32Array.from([0, 4, 8, 12, 16]) };
  const cover = new PathCover(region(), start);
  const change = new ChainChange(cover);
  const after = new Int32Array(4);
  expect(change.propose(3, 7, false, false)).toBe(true);
  change.endsAfter(after);
  change.commit();
  const ends = [cover.chainOf[3]!, cover.chainOf[6]!].flatMap((chain) => [cover.endA[chain]!, cover.endB[chain]!]);
  expect([...after].sort()).toEqual(ends.sort());
});
