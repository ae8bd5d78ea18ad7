import { expect, test } from 'vitest';
import { lineUp } from '../../../../src/calc/runs/search/line-up-runs';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('lineUp turns a run whose far end alone is in reach, and adds a run for a panel that is too large', () => {
  const grid = block(2, 3);
  grid.pixelWidth[5] = 4320;
  // Rows 0 and 1 in reach; place 5 (column 1, row 2) is too large, so the cells are places 0 to 4.
  const zone = makeReady(grid, aPort(4, 'panels', 600));
  const runs = { order: new Int32Array(6), start: new Int32Array(7), pixels: new Float64Array(6), ports: 0 };
  const cells = Int32Array.from([2, 1, 0, 4, 3]);
  lineUp(zone, cells, { start: Int32Array.from([0, 3, 5]), pixels: Float64Array.from([30, 20]), count: 2 }, runs);
  expect([...runs.order]).toEqual([0, 1, 2, 4, 3, 5]);
  expect([...runs.start.subarray(0, runs.ports + 1)]).toEqual([0, 3, 5, 6]);
  expect([...runs.pixels.subarray(0, runs.ports)]).toEqual([30, 20, 4320 * 216]);
});

test('lineUp leaves a run as it is where both ends are above reach, or both in reach', () => {
  const zone = makeReady(block(1, 5), aPort(9, 'panels', 600));
  const runs = { order: new Int32Array(5), start: new Int32Array(6), pixels: new Float64Array(5), ports: 0 };
  const cuts = { start: Int32Array.from([0, 2, 4, 5]), pixels: Float64Array.from([2, 2, 1]), count: 3 };
  lineUp(zone, Int32Array.from([4, 3, 1, 0, 2]), cuts, runs);
  expect([...runs.order]).toEqual([4, 3, 1, 0, 2]);
});
