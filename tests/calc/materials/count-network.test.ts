import { expect, test } from 'vitest';
import { countNetwork } from '../../../src/calc/materials/count-network';
import { defaultAddresses } from '../../../src/plan/addresses';
import { defaultSync } from '../../../src/plan/sync';
import { plainResults, zonesOf } from '../nodes/plain-nodes';
import { plainSurface, plainType } from '../zones/plain-surface';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });
/** One node, one processor, one camera, and as many trackers as asked. */
const counted = (trackers: number, changes: Partial<Parameters<typeof plainResults>[0]> = {}) =>
  countNetwork(
    plainResults({
      tables: [wall],
      zones: zonesOf(wall, 6),
      feed: { spareNodes: 0 },
      sync: { ...defaultSync, trackers },
      ...changes,
    }).results,
  );

test('countNetwork: a cable to every device and every splitter, splitters of eight outlets', () => {
  // 4 devices on one splitter: its own cable and 4 more.
  expect(counted(1)).toEqual({ devices: 4, references: 1, splitters: 1, syncCables: 5, switches: 1, networkCables: 4 });
  // 9 devices: a second splitter takes an outlet of the first, so that 7 + 8 are left.
  expect(counted(6)).toMatchObject({ devices: 9, splitters: 2, syncCables: 11 });
});

test('countNetwork: switches of four ports are joined by a cable each', () => {
  // 6 devices: one switch has 4 ports, two joined have 3 + 3, and the cable between.
  const addresses = { ...defaultAddresses, portsASwitch: 4 };
  expect(counted(3, { addresses })).toMatchObject({ devices: 6, switches: 2, networkCables: 7 });
});

test('countNetwork: sync over the network takes no cable of its own but that of its reference', () => {
  const sync = { ...defaultSync, reference: 'ptp' as const };
  expect(counted(1, { sync })).toEqual({
    ...{ devices: 4, references: 1, splitters: 0, syncCables: 0, switches: 1 },
    networkCables: 5,
  });
});

test('countNetwork of a stage that nothing feeds is nought', () => {
  expect(Object.values(counted(1, { zones: [] }))).toEqual([0, 0, 0, 0, 0, 0]);
});
