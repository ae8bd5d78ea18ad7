import { expect, test } from 'vitest';
import { weightBefore } from '../../../../../src/calc/runs/search/bounds/weight-before';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

function before(columns: number, rows: number, missing: readonly number[], weight: (place: number) => number) {
  const grid = block(columns, rows, (place) => !missing.includes(place));
  const places = [...grid.present.keys()].filter((place) => grid.present[place] === 1);
  // Rows 0 and 1 are in reach.
  const region = regionOf(grid, aPort(4, 'panels', 600), Int32Array.from(places));
  const found = weightBefore(region, places.map(weight));
  return Object.fromEntries(places.map((place, cell) => [place, found[cell]]));
}

test('weightBefore is 0 in reach and grows by what stands between', () => {
  // A column of five: rows 0 and 1 in reach; row 2 is reached over one panel, row 3 over two.
  expect(before(1, 5, [], () => 1)).toEqual({ 0: 0, 1: 0, 2: 1, 3: 2, 4: 3 });
});

test('weightBefore goes round what is heavy, and is Infinity where no way leads', () => {
  // Two columns of four; place 2 (column 0, row 2) weighs 10. Place 3 above it: 1 + 1 + 1 round by column 1, not 1 + 10.
  expect(before(2, 4, [], (place) => (place === 2 ? 10 : 1))).toMatchObject({ 2: 1, 3: 3, 6: 1, 7: 2 });
  expect(before(1, 4, [2], () => 1)).toEqual({ 0: 0, 1: 0, 3: Number.POSITIVE_INFINITY });
});
