import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groupZones } from '../../../src/calc/nodes/group-zones';

/** Zones in a lattice, the lowest row first, each from column 1 up. */
const lattice = (across: number, up: number) =>
  Array.from({ length: across * up }, (_, i) => ({
    firstColumn: 1 + (i % across) * 8,
    firstRow: 1 + Math.floor(i / across) * 10,
  }));

test('groupZones gives each zone a group of its own at one a node, and one group of all at null', () => {
  expect(groupZones(lattice(3, 2), 1)).toEqual([[0], [1], [2], [3], [4], [5]]);
  expect(groupZones(lattice(3, 2), null)).toEqual([[0, 1, 2, 3, 4, 5]]);
  expect(groupZones([], null)).toEqual([]);
  expect(groupZones([], 3)).toEqual([]);
});

// Common practice, no source: four ceiling processors, two by two, on one computer.
test('groupZones puts the four quadrants of a ceiling on one node', () => {
  expect(groupZones(lattice(2, 2), 4)).toEqual([[0, 1, 2, 3]]);
});

test('groupZones takes neighbours of a row first, as even as they go, and never two rows in part', () => {
  // Five across at four a node: two nodes, so three and two, not four and one.
  expect(groupZones(lattice(5, 1), 4)).toEqual([
    [0, 1, 2],
    [3, 4],
  ]);
  // Three across and two up, two a node: two nodes a row of zones.
  expect(groupZones(lattice(3, 2), 2)).toEqual([[0, 1], [2], [3, 4], [5]]);
});

test('groupZones takes whole rows of zones where more than a row may share a node', () => {
  // Two across, five up, seven a node: three rows of two; two nodes, of three rows and of two.
  expect(groupZones(lattice(2, 5), 7)).toEqual([
    [0, 1, 2, 3, 4, 5],
    [6, 7, 8, 9],
  ]);
});

test('groupZones puts every zone in one group of at most so many, groups in the order of their first zones', () => {
  const corner = fc.record({ firstColumn: fc.integer({ min: 1, max: 6 }), firstRow: fc.integer({ min: 1, max: 4 }) });
  const zones = fc
    .uniqueArray(corner, { selector: ({ firstColumn, firstRow }) => `${firstColumn}/${firstRow}`, maxLength: 24 })
    .map((some) => [...some].sort((a, b) => a.firstRow - b.firstRow || a.firstColumn - b.firstColumn));
  fc.assert(
    fc.property(zones, fc.integer({ min: 1, max: 30 }), (some, most) => {
      const groups = groupZones(some, most);
      expect(groups.flat().sort((a, b) => a - b)).toEqual(some.map((_, i) => i));
      expect(Math.max(0, ...groups.map(({ length }) => length))).toBeLessThanOrEqual(most);
      const firsts = groups.map((group) => group[0]!);
      expect(firsts).toEqual([...firsts].sort((a, b) => a - b));
    }),
  );
});
