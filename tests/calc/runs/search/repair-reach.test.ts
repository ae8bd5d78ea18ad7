import { expect, test } from 'vitest';
import { repairReach } from '../../../../src/calc/runs/search/repair-reach';
import { wireInWay } from '../../../../src/calc/runs/search/wire-in-way';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

/** 10 columns of 8 rows, rows 0 to 4 in reach, with a door of two columns and five rows: what stands above it is out of reach. */
const door = (place: number) => !([4, 5].includes(Math.floor(place / 8)) && place % 8 < 5);
const zone = makeReady(block(10, 8, door), aPort(10));
const [columns] = wireInWay(zone, { kind: 'columns' });

test('repairReach brings down the entries above a door, and leaves the runs far from it as they are', () => {
  expect(columns!.entriesOutOfReach).toBe(2);
  const { wiring } = repairReach(zone, columns!, 400_000);
  expect(wiring.entriesOutOfReach).toBe(0);
  expect(wiring.way).toEqual({ kind: 'columns' });
  const first = Array.from(wiring.order.subarray(0, wiring.start[1]));
  expect(first).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect([...wiring.order].sort((a, b) => a - b)).toEqual([...columns!.order].sort((a, b) => a - b));
});

test('repairReach gives the wiring itself where every entry is in reach, or no step is left', () => {
  const whole = makeReady(block(10, 8), aPort(10));
  const [wiring] = wireInWay(whole, { kind: 'columns' });
  expect(repairReach(whole, wiring!, 400_000)).toEqual({ wiring, steps: 0 });
  expect(repairReach(zone, columns!, 0).wiring).toBe(columns);
});

test('repairReach does not try again what came to nothing', () => {
  // Four rows in reach and a door as high: 72 panels above, and ten columns that bring up seven each. Two stay behind.
  const isThere = (place: number) => !([9, 10].includes(Math.floor(place / 10)) && place % 10 < 4);
  const full = makeReady(block(12, 10, isThere), aPort(8, 'panels', 1600));
  const [wiring] = wireInWay(full, { kind: 'split', aboveRow: 3, wide: 2 });
  const inVain = new Set<string>();
  const first = repairReach(full, wiring!, 2_000_000, inVain);
  expect(first.wiring.entriesOutOfReach).toBeGreaterThanOrEqual(1);
  expect(inVain.size).toBeGreaterThan(0);
  expect(repairReach(full, wiring!, 2_000_000, inVain).steps).toBeLessThan(first.steps);
});
