import { expect, test } from 'vitest';
import { scheduleSync, syncFormats } from '../../src/sheets/schedule-sync';
import { plainResults, zonesOf } from '../calc/nodes/plain-nodes';
import { plainSurface, plainType } from '../calc/zones/plain-surface';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });
const stage = { tables: [wall], zones: zonesOf(wall, 6), feed: { spareNodes: 0 } };

test('scheduleSync numbers the cables from the reference on, names their standard, and counts splitters', () => {
  // One node, one processor, one camera and one tracker on one splitter.
  const schedule = scheduleSync('tri-level', plainResults(stage).results.sync);
  expect(schedule.count).toBe(5);
  expect(schedule.row(0).slice(0, 6)).toEqual([
    1,
    'Reference',
    1,
    'Splitter 1',
    'Tri-level, SMPTE ST 274',
    'Coaxial, 75 ohm',
  ]);
  expect(schedule.row(2).slice(0, 4)).toEqual([3, 'Splitter 1', 2, 'P1']);
  expect(schedule.totals).toEqual([null, '5 cables', null, '1 splitter', null, null, null, null]);
  expect(schedule.columns).toHaveLength(schedule.row(0).length);
});

test('scheduleSync gives phases in seconds and degrees', () => {
  const degrees = { amount: 90, unit: 'degrees' as const };
  const { inputs } = plainResults(stage);
  const sync = { ...inputs.sync, phase: { ...inputs.sync.phase, processors: degrees } };
  // A quarter of a frame of 60 a second: 4.1667 ms.
  const row = scheduleSync('black-burst', plainResults({ ...stage, sync }).results.sync).row(2);
  expect(row.at(-1)).toBe(90);
  expect(row.at(-2)).toBeCloseTo(1 / 240, 12);
});

test('syncFormats name a SMPTE standard each', () => {
  expect(Object.values(syncFormats).every(({ format }) => /SMPTE ST \d+/.test(format))).toBe(true);
});
