import { expect, test } from 'vitest';
import { FrontierLayer } from '../../../../../src/calc/runs/search/exact/frontier-layer';

// Two slots, two fields a chain: how its ends stand, and its load.
const layer = () => new FrontierLayer(2, 2);
const cost = (high: number, closed: number, settled = 0) => ({ high, closed, settled });
const state = (slots: readonly number[], ...fields: number[]) =>
  Int32Array.from([...slots, ...fields, 0, 0]).subarray(0, 6);

test('FrontierLayer drops a state that carries more and has cost no less', () => {
  const kept = layer();
  kept.add(state([1, 0], 0, 5), 1, cost(0, 3), 10, 0);
  kept.add(state([1, 0], 0, 6), 1, cost(0, 3), 11, 0);
  kept.add(state([1, 0], 0, 5), 1, cost(1, 0), 12, 0);
  expect([kept.count, kept.parent[0]]).toEqual([1, 10]);
});

test('FrontierLayer lets a state take the place of one that is needless beside it', () => {
  const kept = layer();
  kept.add(state([1, 0], 0, 5), 1, cost(0, 3), 10, 0);
  kept.add(state([1, 0], 0, 4), 1, cost(0, 3), 11, 2);
  expect([kept.count, kept.parent[0], kept.decision[0]]).toEqual([1, 11, 2]);
  const read = new Int32Array(6);
  kept.read(0, read);
  expect([...read.subarray(0, 4)]).toEqual([1, 0, 0, 4]);
});

test('FrontierLayer keeps what is open otherwise, and what carries less though it has cost more', () => {
  const kept = layer();
  kept.add(state([1, 0], 0, 5), 1, cost(0, 3), 1, 0);
  kept.add(state([0, 1], 0, 5), 1, cost(0, 3), 2, 0);
  kept.add(state([1, 0], 1, 5), 1, cost(0, 3), 3, 0);
  kept.add(state([1, 0], 0, 4), 1, cost(0, 4), 4, 0);
  expect(kept.count).toBe(4);
  kept.add(state([1, 2], 0, 1, 0, 9), 2, cost(0, 3), 5, 0);
  kept.add(state([1, 2], 0, 9, 0, 1), 2, cost(0, 3), 6, 0);
  expect(kept.count).toBe(6);
});

test('FrontierLayer finds fewest ends above reach, then fewest chains, among a thousand states', () => {
  const kept = layer();
  for (let i = 0; i < 1000; i++) {
    // Loads that rise as costs fall, so that none is needless.
    kept.add(state([1, 0], 0, i), 1, cost(i < 700 ? 1 : 0, 2000 - i), i, 0);
  }
  expect(kept.count).toBe(1000);
  expect(kept.parent[kept.best()]).toBe(999);
});

test('FrontierLayer neither compares nor loses fields and costs that are for bounds only', () => {
  // Of the three fields of a chain the first two are compared.
  const kept = new FrontierLayer(1, 3, 2);
  kept.add(Int32Array.from([1, 0, 5, 8]), 1, cost(0, 3, 20), 10, 0);
  kept.add(Int32Array.from([1, 0, 5, 7]), 1, cost(0, 3, 10), 11, 0);
  const read = new Int32Array(4);
  kept.read(0, read);
  expect([kept.count, kept.settled[0], ...read]).toEqual([1, 20, 1, 0, 5, 8]);
  kept.add(Int32Array.from([1, 0, 4, 9]), 1, cost(0, 3, 30), 12, 0);
  kept.read(0, read);
  expect([kept.count, kept.settled[0], ...read]).toEqual([1, 30, 1, 0, 4, 9]);
});
