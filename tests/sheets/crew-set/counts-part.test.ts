import { expect, test } from 'vitest';
import { countsPart } from '../../../src/sheets/crew-set/counts-part';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { tablesOf } from './sample-set';

const parts = stageFixture({ columns: 9, rows: 4, jointDeg: 0, zoneColumns: 3 });

test('countsPart counts the surface and its three zones', () => {
  expect(tablesOf(countsPart(parts)!).map(({ schedule }) => schedule.count)).toEqual([4]);
});

test('countsPart of no panels is none', () => {
  expect(countsPart({ ...parts, surfaces: { surfaces: [], offsets: [], total: 0 } })).toBeNull();
});
