import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createRandomBits } from '../../../../../src/calc/runs/search/random-bits';
import { CellCoverer } from '../../../../../src/calc/runs/search/sets/cell-coverer';
import { listRunSets } from '../../../../../src/calc/runs/search/sets/run-sets';
import { makeReady, type ZoneToWire } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

const free = { high: 1e6, runs: 1e6, dearHigh: 1e6, dearRuns: 1e6, byHigh: true, beam: 1e6 };

function prepare({ region }: ZoneToWire) {
  const sets = listRunSets(region, 1e6)!;
  return {
    sets,
    all: Array.from({ length: region.size }, (_, cell) => cell),
    coverer: new CellCoverer(sets, region.size, createRandomBits(1)),
  };
}

test('CellCoverer covers every cell once, with fewest ends above reach and then fewest sets', () => {
  fc.assert(
    fc.property(smallZone, (zone) => {
      const { sets, all, coverer } = prepare(zone);
      fc.pre(all.length > 0);
      const found = coverer.cover(all, free)!;
      const cells = found.sets.flatMap((set) => [...sets.cells.subarray(sets.start[set], sets.start[set + 1])]);
      expect(cells.sort((a, b) => a - b)).toEqual(all);
      expect(coverer.cut).toBe(false);
      const best = leastByTrying(zone.grid, zone.limits);
      expect({ high: found.high, ports: found.sets.length }).toEqual(best);
      // Nothing better is within a tighter aim.
      expect(coverer.cover(all, { ...free, high: best.high, runs: best.ports - 1 })).toBeNull();
      expect(coverer.cover(all, { ...free, high: best.high - 1 })).toBeNull();
      expect(coverer.cut).toBe(false);
    }),
    { numRuns: 60 },
  );
});

test('CellCoverer covers a part of the cells by sets that lie inside it', () => {
  const { sets, coverer } = prepare(makeReady(block(4, 4), aPort(4)));
  // The ring round the four panels in the middle: twelve panels, three runs of four.
  const ring = [0, 1, 2, 3, 4, 7, 8, 11, 12, 13, 14, 15];
  const found = coverer.cover(ring, free)!;
  expect(found.sets.length).toBe(3);
  const cells = found.sets.flatMap((set) => [...sets.cells.subarray(sets.start[set], sets.start[set + 1])]);
  expect(cells.sort((a, b) => a - b)).toEqual(ring);
});

test('CellCoverer leaves out what costs too much above the prices, and says when it had to cut ways', () => {
  const { sets, all, coverer } = prepare(makeReady(block(4, 4), aPort(4)));
  coverer.dearRuns = Float64Array.from({ length: sets.count }, (_, set) =>
    sets.start[set + 1]! - sets.start[set]! === 4 ? 1 : 0,
  );
  const cheap = coverer.cover(all, { ...free, dearRuns: 0.5 })!;
  // Runs of four are dear: runs of three at most, of which sixteen panels need six.
  expect(cheap.sets.length).toBe(6);
  expect(coverer.cut).toBe(false);
  coverer.cover(all, { ...free, beam: 1 });
  expect(coverer.cut).toBe(true);
});

test('CellCoverer keeps apart cells that are far from each other in their order', () => {
  // Two columns of 29: three to a port, runs over both of them are as long as 30 cells of the order.
  const { sets, all, coverer } = prepare(makeReady(block(2, 29), aPort(3)));
  const found = coverer.cover(all, { ...free, beam: 200 })!;
  const cells = found.sets.flatMap((set) => [...sets.cells.subarray(sets.start[set], sets.start[set + 1])]);
  expect(cells.sort((a, b) => a - b)).toEqual(all);
});

test('CellCoverer says that it cut where a set is too long for its bits', () => {
  // A row of sixty along the frontier, and one beside it: a run round the far end spans more cells than there are bits.
  const { all, coverer } = prepare(makeReady(block(2, 60), aPort(3)));
  coverer.cover(all, free);
  expect(coverer.cut).toBe(true);
});
