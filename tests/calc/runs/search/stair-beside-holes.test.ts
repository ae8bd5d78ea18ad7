import { expect, test } from 'vitest';
import { stairBesideHoles } from '../../../../src/calc/runs/search/stair-beside-holes';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

/** 12 columns of ten rows, four of them in reach, with doors of four rows in these columns. */
const zone = (doors: readonly number[], panels = 8, counting: 'panels' | 'rectangle' = 'panels') =>
  makeReady(
    block(12, 10, (place) => !(doors.includes(Math.floor(place / 10)) && place % 10 < 4)),
    aPort(panels, counting, 1600),
  );

const runsOf = ({ order, start }: { order: Int32Array; start: Int32Array }) =>
  Array.from(start.subarray(1), (end, run) => [...order.subarray(start[run]!, end)]);

test('stairBesideHoles takes the column above a door by six runs beside it, of eight panels each', () => {
  const wiring = stairBesideHoles(zone([3]))!;
  expect(wiring.entriesOutOfReach).toBe(0);
  // The run of column 4 comes up from row 3, has row 4 of its own column and all six panels above the door.
  expect(runsOf(wiring)).toContainEqual([43, 44, 34, 35, 36, 37, 38, 39]);
  expect(runsOf(wiring)).toContainEqual([53, 54, 55, 45, 46, 47, 48, 49]);
  // That of column 9 has its own six and one of column 8.
  expect(runsOf(wiring)).toContainEqual([93, 94, 95, 96, 97, 98, 99, 89]);
});

test.each([[[0]], [[11]], [[6]], [[5, 6]], [[0, 11]]])(
  'stairBesideHoles beside doors in columns %j leaves no entry above reach, no port over and no panel out',
  (doors) => {
    const ready = zone(doors, doors.length === 1 ? 8 : 9);
    const wiring = stairBesideHoles(ready);
    // Two doors side by side have five columns on either side and need six, or five where the last goes over at the top.
    expect(wiring).not.toBeNull();
    expect(wiring).toMatchObject({ entriesOutOfReach: 0 });
    expect(wiring!.fullestPixels).toBeLessThanOrEqual(ready.limits.usablePixels);
    expect([...wiring!.order].sort((a, b) => a - b)).toEqual([...ready.region.places]);
    for (const run of runsOf(wiring!)) {
      run.slice(1).forEach((place, i) => {
        const before = run[i]!;
        const across = Math.abs(Math.floor(place / 10) - Math.floor(before / 10));
        expect(across + Math.abs((place % 10) - (before % 10))).toBe(1);
      });
    }
  },
);

test('stairBesideHoles goes over at the top where a port takes two columns', () => {
  // One in reach, six up, six down above the door.
  expect(runsOf(stairBesideHoles(zone([3], 13))!)).toContainEqual([43, 44, 45, 46, 47, 48, 49, 39, 38, 37, 36, 35, 34]);
});

test('stairBesideHoles is null where there is no room for a stair, or a port takes too little', () => {
  // Columns 7 and 8 of twelve: three columns are left on the right of them.
  expect(stairBesideHoles(zone([7, 8]))).toBeNull();
  expect(stairBesideHoles(zone([3], 7))).toBeNull();
  expect(stairBesideHoles(zone([3], 8, 'rectangle'))).toBeNull();
});

test('stairBesideHoles leaves a column above a door as a run from above reach where there is no room, as many as may be', () => {
  // Columns 9 and 10 of twelve: the stair for column 9 goes to the left, and one column is left on the right for the other one.
  const ready = zone([9, 10]);
  expect(stairBesideHoles(ready)).toBeNull();
  const wiring = stairBesideHoles(ready, 1)!;
  expect(wiring.entriesOutOfReach).toBe(1);
  expect(runsOf(wiring)).toContainEqual([104, 105, 106, 107, 108, 109]);
  expect([...wiring.order].sort((a, b) => a - b)).toEqual([...ready.region.places]);
  expect(wiring.fullestPixels).toBeLessThanOrEqual(ready.limits.usablePixels);
});

test('stairBesideHoles is null where returns want both ends in reach, and where no row is in reach', () => {
  const { grid, limits } = zone([3]);
  expect(stairBesideHoles(makeReady(grid, { ...limits, lastObeysReach: true }))).toBeNull();
  expect(stairBesideHoles(makeReady(grid, { ...limits, reachMm: -1 }))).toBeNull();
});
