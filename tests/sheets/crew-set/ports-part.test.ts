import { expect, test } from 'vitest';
import { homeRunNote } from '../../../src/sheets/crew-set/home-run-note';
import { portsPart } from '../../../src/sheets/crew-set/ports-part';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { tablesOf, textsOf } from './sample-set';

const parts = stageFixture({ columns: 9, rows: 4, jointDeg: 0, zoneColumns: 3, splitAboveRow: 0 });

test('portsPart has a row for every run, and says what the length of a home run holds', () => {
  const part = portsPart(parts)!;
  expect(tablesOf(part).map(({ schedule }) => schedule.count)).toEqual([9]);
  expect(textsOf(part)).toContain(homeRunNote);
});

test('portsPart where nothing is wired is none', () => {
  expect(portsPart({ ...parts, runs: { ...parts.runs, runs: [] } })).toBeNull();
});
