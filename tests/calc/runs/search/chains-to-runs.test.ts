import { expect, test } from 'vitest';
import { chainsToRuns, listRuns, runsToChains } from '../../../../src/calc/runs/search/chains-to-runs';
import { measureWiring } from '../../../../src/calc/runs/search/measure-wiring';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

const grid = block(3, 3);
// Rows 0 and 1 are in reach.
const limits = aPort(9, 'panels', 600);
const region = regionOf(grid, limits, Int32Array.from(Array(9).keys()));

test('chainsToRuns enters at the end in reach, or else where the cable home is shorter', () => {
  // From the top of column 0 down; a chain from the foot of column 2 to that of column 1, the middle.
  const chains = { order: Int32Array.from([2, 1, 0, 6, 7, 8, 5, 4, 3]), start: Int32Array.from([0, 3, 9]) };
  expect(chainsToRuns(grid, region, chains)).toEqual([
    [0, 1, 2],
    [3, 4, 5, 8, 7, 6],
  ]);
});

test('runsToChains takes those runs of a wiring that lie in the region, over its cells', () => {
  const runs = listRuns([
    [0, 1, 2],
    [3, 4, 5],
    [6, 7, 8],
  ]);
  const wiring = measureWiring(grid, limits, { kind: 'columns' }, runs, new Int32Array(0));
  const right = regionOf(grid, limits, Int32Array.from([8, 7, 6, 3, 4, 5]));
  const { order, start } = runsToChains(right, wiring);
  expect([...order]).toEqual([3, 4, 5, 2, 1, 0]);
  expect([...start]).toEqual([0, 3, 6]);
});

test('listRuns puts runs one after the other', () => {
  const { order, start } = listRuns([[4, 5], [], [1]]);
  expect([[...order], [...start]]).toEqual([
    [4, 5, 1],
    [0, 2, 2, 3],
  ]);
});
