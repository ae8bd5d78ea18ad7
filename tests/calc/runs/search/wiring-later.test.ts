import { expect, test } from 'vitest';
import { measureRuns } from '../../../../src/calc/runs/search/measure-runs';
import { sortRuns } from '../../../../src/calc/runs/search/sort-runs';
import { WiringLater } from '../../../../src/calc/runs/search/wiring-later';
import { aPort, block } from './block-of-panels';

const grid = block(1, 3);
const runs = {
  order: Int32Array.from([2, 0, 1]),
  start: Int32Array.from([0, 1, 3]),
  pixels: Float64Array.from([100, 200]),
  ports: 2,
};

test('WiringLater lays its runs out when they are asked for, and once', () => {
  let times = 0;
  const measures = measureRuns(grid, aPort(2), runs, 0);
  const wiring = new WiringLater({ kind: 'columns' }, Int32Array.from([2]), measures, () => {
    times++;
    return sortRuns(runs);
  });
  expect(wiring).toMatchObject({ ...measures, way: { kind: 'columns' } });
  expect([...wiring.tooLarge]).toEqual([2]);
  expect(times).toBe(0);
  expect([...wiring.order]).toEqual([0, 1, 2]);
  expect([...wiring.start]).toEqual([0, 2, 3]);
  expect([...wiring.pixels]).toEqual([200, 100]);
  expect(times).toBe(1);
});
