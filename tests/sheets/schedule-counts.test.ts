import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { scheduleCounts } from '../../src/sheets/schedule-counts';
import { stageParts } from '../../src/sheets/stage-parts';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';
import { cells } from './cells';

/** Six columns of four rows in two zones, each column a run and a circuit from row 1 up; C2 R2 is a hole. */
const parts = stageFixture({
  columns: 6,
  rows: 4,
  jointDeg: 0,
  zoneColumns: 3,
  splitAboveRow: 0,
  hole: { column: 2, row: 2, columns: 1, rows: 1 },
});

test('scheduleCounts counts panels and jumpers of a surface and of each of its zones', () => {
  const schedule = scheduleCounts(parts);
  const [whole, first, second] = [0, 1, 2].map((row) => cells(schedule, row));
  // 23 panels; the column with the hole makes two runs: 7 in all, so 16 data jumpers; zone 1 has 11 panels on 4 runs.
  expect(whole).toMatchObject({ area: 'A Wall', panels: 23, runs: 7, dataJumpers: 16, returns: 0 });
  expect(first).toMatchObject({ area: 'A, processor 1: C1 to C3, R1 to R4', panels: 11, runs: 4, dataJumpers: 7 });
  expect(second).toMatchObject({ panels: 12, runs: 3, dataJumpers: 9 });
  expect(cells(schedule, 'totals')).toMatchObject({ area: 'All', panels: 23, runs: 7, dataJumpers: 16 });
});

test('scheduleCounts counts a jumper where it leads to, so that parts of a circuit in two zones add up', () => {
  const [circuit] = parts.power.circuits;
  // One circuit through all 23 panels: it begins in zone 1.
  const power = {
    ...parts.power,
    circuits: [{ ...circuit!, start: 0, count: 23 }],
    circuitOf: new Int32Array(23),
  };
  const schedule = scheduleCounts({ ...parts, power });
  expect([1, 2].map((row) => cells(schedule, row))).toMatchObject([
    { circuits: 1, powerJumpers: 10 },
    { circuits: 0, powerJumpers: 12 },
  ]);
  expect(cells(schedule, 'totals')).toMatchObject({ circuits: 1, powerJumpers: 22 });
});

test.each(sampleNames)('scheduleCounts of %s comes to what the bill counts', (name) => {
  const plan = samplePlan(name);
  const evaluation = createEvaluator().evaluate(plan);
  const totals = cells(scheduleCounts(stageParts(plan, evaluation)), 'totals');
  const { lines } = evaluation.materials.results;
  const needed = (itemName: RegExp) => lines.find((line) => itemName.test(line.name))?.needed;
  expect(totals.panels).toBe(evaluation.headline.panels);
  expect(totals.dataJumpers).toBe(needed(/^Data, panel to panel/));
  expect(totals.powerJumpers).toBe(needed(/^Power, panel to panel/));
  expect(Number(totals.runs) + Number(totals.returns)).toBe(needed(/^Data, home run/));
  expect(totals.circuits).toBe(evaluation.headline.circuits);
});

test('scheduleCounts of a plan without panels has no row', () => {
  const none = { ...parts, surfaces: { surfaces: [], offsets: [], total: 0 }, zones: [] };
  expect(scheduleCounts(none).count).toBe(0);
});
