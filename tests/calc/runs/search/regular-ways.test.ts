import { expect, test } from 'vitest';
import { regularWays } from '../../../../src/calc/runs/search/regular-ways';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { wayKey } from '../../../../src/calc/runs/way-key';
import { aPort, block } from './block-of-panels';

const of = (...args: Parameters<typeof makeReady>) => [...regularWays(makeReady(...args))];

test('regularWays are columns, rows, every fold, and splits above rows that an entry can stand in', () => {
  const ways = of(block(4, 6), aPort(6, 'panels', 1100));
  const splits = ways.flatMap((way) => (way.kind === 'split' ? [[way.aboveRow, way.wide]] : []));
  // Rows 0, 1 and 2 are in reach. Below row 1 stand one row, of which a port takes six panels: all four columns; below row 2
  // two rows, three columns, and all four.
  expect(splits).toEqual([
    [1, 1],
    [1, 2],
    [1, 3],
    [1, 4],
    [2, 1],
    [2, 2],
    [2, 3],
    [2, 4],
  ]);
  expect(ways.flatMap((way) => (way.kind === 'folded' ? [way.wide] : []))).toEqual([2, 3, 4]);
  expect(ways.slice(0, 2)).toEqual([{ kind: 'columns' }, { kind: 'rows' }]);
});

test('regularWays names no way twice, and folds no more columns than there are', () => {
  for (const grid of [block(1, 1), block(1, 9), block(9, 1), block(7, 5)]) {
    const ways = of(grid, aPort(8));
    expect(new Set(ways.map(wayKey)).size).toBe(ways.length);
    for (const way of ways) if ('wide' in way) expect(way.wide).toBeLessThanOrEqual(Math.max(1, grid.columns));
  }
});
