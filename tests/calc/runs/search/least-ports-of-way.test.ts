import { expect, test } from 'vitest';
import { LeastPortsOfWay } from '../../../../src/calc/runs/search/least-ports-of-way';
import { regularWays } from '../../../../src/calc/runs/search/regular-ways';
import { wireInWay } from '../../../../src/calc/runs/search/wire-in-way';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('LeastPortsOfWay counts every strip by itself', () => {
  // 13 columns of 13 rows, 10 panels a port. Columns: two runs each. Split above row 4, two wide: 13 of 9, six pairs of 8, one of 4.
  const least = new LeastPortsOfWay(makeReady(block(13, 13), aPort(10)));
  expect(least.of({ kind: 'columns' })).toBe(26);
  expect(least.of({ kind: 'split', aboveRow: 4, wide: 2 })).toBe(20);
  // Two columns hold 26 panels, three ports: six pairs and one of 13 panels.
  expect(least.of({ kind: 'folded', wide: 2 })).toBe(6 * 3 + 2);
  expect(least.of({ kind: 'rows' })).toBe(17);
});

test('LeastPortsOfWay leaves empty strips out and gives a panel too large a port', () => {
  const grid = block(3, 2, (place) => place > 1);
  grid.pixelWidth[5] = 5000;
  const least = new LeastPortsOfWay(makeReady(grid, aPort(4)));
  // Column 0 is empty; column 2 has one panel that shares a port and one that does not.
  expect(least.of({ kind: 'columns' })).toBe(3);
});

test('LeastPortsOfWay of panels that are all too large is a port each', () => {
  const least = new LeastPortsOfWay(makeReady(block(2, 2), aPort(0)));
  expect(least.of({ kind: 'folded', wide: 2 })).toBe(4);
});

test('LeastPortsOfWay is never above what a way takes', () => {
  for (const counting of ['panels', 'rectangle'] as const) {
    const zone = makeReady(
      block(7, 6, (place) => place % 11 !== 3),
      aPort(5, counting, 1100),
    );
    const least = new LeastPortsOfWay(zone);
    for (const way of regularWays(zone)) {
      for (const { ports } of wireInWay(zone, way)) expect(least.of(way)).toBeLessThanOrEqual(ports);
    }
  }
});
