import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostLinks } from '../../../../../src/calc/runs/search/bounds/most-links';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

test('mostLinks of a cross of five is two: its middle has no more', () => {
  const cross = [1, 3, 4, 5, 7];
  const grid = block(3, 3, (place) => cross.includes(place));
  expect(mostLinks(regionOf(grid, aPort(9), Int32Array.from(cross)))).toBe(2);
});

test('mostLinks of a block counts rings as well: four panels in a square have four', () => {
  expect(mostLinks(regionOf(block(2, 2), aPort(9), Int32Array.from([0, 1, 2, 3])))).toBe(4);
});

test('mostLinks leaves no fewer runs than chains of any length need', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, region }) => {
      const { ports } = leastByTrying(grid, aPort(100, 'panels', 1e6));
      const all = regionOf(grid, aPort(100), region.places);
      expect(region.size - mostLinks(all)!).toBeLessThanOrEqual(ports);
    }),
    { numRuns: 40 },
  );
});

test('mostLinks does not count on above what is enough', () => {
  const region = regionOf(block(3, 3), aPort(9), Int32Array.from(Array(9).keys()));
  expect(mostLinks(region, 5)).toBe(5);
});
