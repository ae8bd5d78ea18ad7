import { expect, test } from 'vitest';
import { schedulePorts } from '../../src/sheets/schedule-ports';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

/** Nine columns of four rows, each column a run from row 1 up, zones of three columns. */
const parts = stageFixture({ columns: 9, rows: 4, jointDeg: 0, zoneColumns: 3, splitAboveRow: 0 });
const returning = (returnProcessor: number) => ({
  ...parts,
  runs: {
    ...parts.runs,
    runs: parts.runs.runs.map((run, i) =>
      i === 0 ? { ...run, returnPort: '2A-09', returnProcessor, exitHeightMm: 1500 } : run,
    ),
  },
});

test('schedulePorts says of each port what a crew pulls its cable by', () => {
  const schedule = schedulePorts(parts);
  expect(schedule.count).toBe(9);
  // 500 along the foot to column 1, a metre of slack: the 2 m cable.
  expect(cells(schedule, 0)).toEqual({
    port: '1A-01',
    panels: 4,
    entry: 'C1 R1',
    last: 'C1 R4',
    share: (4 * 216 * 216) / 520_000,
    entryHeight: 0,
    reach: 'yes',
    homeRun: 2000,
  });
  expect(cells(schedule, 'totals')).toMatchObject({ port: '9 ports', panels: 36, homeRun: null });
});

test('schedulePorts where runs return says where to, and by which cable', () => {
  // From column 1 to the middle of zone 2, column 5: 2000 along, 1500 up, 1000 of slack, so 5 m.
  expect(cells(schedulePorts(returning(2)), 0)).toMatchObject({ returns: '2A-09', returnCable: 5000 });
  expect(cells(schedulePorts(returning(2)), 1)).toMatchObject({ returns: null, returnCable: null });
});

test('schedulePorts has a cable measured where its way leaves the surface or no stock length reaches', () => {
  expect(cells(schedulePorts(returning(99)), 0)).toMatchObject({ returnCable: 'to measure' });
  const runs = parts.runs.runs.map((run) => ({ ...run, entryHeightMm: 200_000 }));
  expect(cells(schedulePorts({ ...parts, runs: { ...parts.runs, runs } }), 0)).toMatchObject({ homeRun: 'to measure' });
});
