import { expect, test } from 'vitest';
import { countWiring } from '../../../src/calc/materials/count-wiring';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

// One wall of 5 columns and 3 rows, zones of 3 columns: 2 zones, 15 panels, a circuit a column.
test('countWiring counts runs, circuits and the panels on them', () => {
  const { runs, power, zones } = stageFixture({ columns: 5, rows: 3, jointDeg: 0, zoneColumns: 3 });
  const counts = countWiring(runs, power, { zones, surfaces: [], processors: 2 }, 15);
  expect(counts).toMatchObject({
    panels: 15,
    panelsOnRuns: 15,
    panelsOnCircuits: 15,
    circuits: 5,
    zones: 2,
    returns: 0,
  });
  expect(counts.runs).toBe(runs.runs.length);
});
