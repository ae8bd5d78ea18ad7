import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import type { WallHole } from '../../../src/plan/wall';
import { samplePlan } from '../../arbitraries/sample-plans';

/** The zones of a plan's wall and their wiring, with 'repeats' first as in all samples. */
function wallZones(plan: Plan) {
  const { zones, runs } = createEvaluator().evaluate(plan);
  const own = zones.results.zones.flatMap((zone, i) =>
    zone.letter === 'A' ? [{ zone, runs: runs.results.zones[i]! }] : [],
  );
  return { zones: own, chosen: runs.results.surfaces[0]!.ways.find(({ chosen }) => chosen)! };
}

const ring = samplePlan('ring-feet');
const withDoor = (door: Partial<WallHole>): Plan => ({
  ...ring,
  walls: ring.walls.map((wall) => ({ ...wall, holes: [{ ...wall.holes[0]!, ...door }] })),
});

test('wireZones wires the narrow zone of the horseshoe in the way and the figures of the wide ones', () => {
  const { zones, chosen } = wallZones(samplePlan('horseshoe'));
  // 14 rows, 12 panels a port, three breakouts of eight ports: every column up from row 3 (12 panels), and rows 1 and 2 folded
  // five columns wide (10 panels). 13 columns leave three over (6 panels), 10 columns none: 13 + 3 ports and 10 + 2, three figures.
  expect(zones.map(({ zone }) => zone.columns)).toEqual([13, 13, 13, 13, 13, 10]);
  for (const { runs } of zones) expect(runs.way).toEqual({ kind: 'split', aboveRow: 2, wide: 5 });
  expect(zones.map(({ runs }) => runs.ports)).toEqual([16, 16, 16, 16, 16, 12]);
  expect(chosen).toMatchObject({ figures: 3, fewest: 6, most: 12, entriesOutOfReach: 0 });
});

test('wireZones wires all zones of the ring in one way, the narrow one and the one with the door too', () => {
  const { zones } = wallZones(ring);
  expect(zones.map(({ zone }) => [zone.columns, zone.panels])).toEqual([
    [12, 120],
    [12, 114],
    [12, 120],
    [12, 120],
    [12, 120],
    [12, 120],
    [11, 110],
  ]);
  expect(new Set(zones.map(({ runs }) => JSON.stringify(runs.way))).size).toBe(1);
  expect(zones.every(({ runs }) => runs.entriesOutOfReach === 0)).toBe(true);
});

test('wireZones beside a door of four rows, all that is in reach, leaves out of reach only what no wiring brings down', () => {
  // Eight panels a port, four rows in reach. The door takes two of twelve columns: ten are left to come up through, each with
  // seven of the 72 panels above, for one is spent on the way. 70 are two fewer: one entry is above reach, whatever the wiring.
  const { zones } = wallZones(withDoor({ rows: 4 }));
  expect(zones.map(({ runs }) => runs.entriesOutOfReach)).toEqual([0, 1, 0, 0, 0, 0, 0]);
});

test('wireZones beside such a door at columns 22 and 23 leaves one entry above reach, though one column is beyond it', () => {
  const { zones } = wallZones(withDoor({ rows: 4, column: 22 }));
  expect(zones.map(({ runs }) => runs.entriesOutOfReach)).toEqual([0, 1, 0, 0, 0, 0, 0]);
});

test.each([14, 17, 20, 23])(
  'wireZones beside a door of one column and four rows at column %d brings every entry into reach',
  (column) => {
    // Eleven columns with seven each are 77, and 72 are above.
    const { zones } = wallZones(withDoor({ rows: 4, columns: 1, column }));
    expect(zones.map(({ runs }) => runs.entriesOutOfReach)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  },
);
