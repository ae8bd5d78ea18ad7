import { expect, test } from 'vitest';
import type { RegularWay } from '../../../../src/calc/runs/search/regular-way';
import { type CutStyle, WayLayout } from '../../../../src/calc/runs/search/way-layout';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

/** Runs of 3 columns by 4 rows, five panels a port: places column * 4 + row. */
function runs(way: RegularWay, style: CutStyle = 'full', fromRight = false, rowsTogether = 1) {
  const layout = new WayLayout(makeReady(block(3, 4), aPort(5)));
  layout.layOut(way, { fromRight, rowsTogether });
  return read(layout, style);
}

function read(layout: WayLayout, style: CutStyle): number[][] {
  const { order, start, ports } = layout.runsOf(style);
  return Array.from({ length: ports }, (_, i) => [...order.subarray(start[i], start[i + 1])]);
}

test('WayLayout lays out columns, folds and rows', () => {
  expect(runs({ kind: 'columns' })).toEqual([
    [0, 1, 2, 3],
    [4, 5, 6, 7],
    [8, 9, 10, 11],
  ]);
  // Eight panels folded over two columns are too many for a port: five and three, or four and four.
  expect(runs({ kind: 'folded', wide: 2 })).toEqual([
    [0, 1, 2, 3, 7],
    [6, 5, 4],
    [8, 9, 10, 11],
  ]);
  expect(runs({ kind: 'folded', wide: 2 }, 'even')).toEqual([
    [0, 1, 2, 3],
    [7, 6, 5, 4],
    [8, 9, 10, 11],
  ]);
  expect(runs({ kind: 'rows' }, 'full', true, 4)).toEqual([
    [8, 4, 0, 1, 5],
    [9, 10, 6, 2, 3],
    [7, 11],
  ]);
});

test('WayLayout splits above a row: single columns up, folds below', () => {
  expect(runs({ kind: 'split', aboveRow: 2, wide: 2 })).toEqual([
    [2, 3],
    [6, 7],
    [10, 11],
    [0, 1, 5, 4],
    [8, 9],
  ]);
  // Above the highest row there is nothing.
  expect(runs({ kind: 'split', aboveRow: 9, wide: 1 })).toEqual(runs({ kind: 'columns' }));
});

test('WayLayout says whether the two styles of cutting differ', () => {
  const layout = new WayLayout(makeReady(block(3, 4), aPort(5)));
  expect(layout.layOut({ kind: 'columns' }, { fromRight: false, rowsTogether: 1 })).toBe(false);
  expect(layout.layOut({ kind: 'folded', wide: 2 }, { fromRight: false, rowsTogether: 1 })).toBe(true);
});

test('WayLayout stacks bands, counts their runs and ends above reach, and gives a panel too large a run of its own', () => {
  const grid = block(3, 4);
  grid.pixelWidth[11] = 216 * 9;
  // Rows 0 and 1 are in reach.
  const layout = new WayLayout(makeReady(grid, aPort(5, 'panels', 600)));
  const bands = [
    { from: 0, end: 3, wide: 1 },
    { from: 3, end: 4, wide: 3 },
  ];
  layout.layOutBands(bands, false);
  expect(read(layout, 'full')).toEqual([[0, 1, 2], [4, 5, 6], [8, 9, 10], [3, 7], [11]]);
  expect(layout.countOf('full')).toEqual({ runs: 4, high: 1 });
});
