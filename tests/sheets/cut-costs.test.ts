import { expect, test } from 'vitest';
import { zoneOfPanels } from '../../src/calc/zones/zone-of-panels';
import { cutCosts } from '../../src/sheets/cut-costs';
import { stageFixture } from '../arbitraries/evaluation-fixture';

test('cutCosts makes a cut at a zone border free, inside a zone dear, and across a run dearest', () => {
  // Zones of 4 columns; below row 3 runs fold over columns 1-2, 3-4, 5-6, 7-8.
  const parts = stageFixture({ columns: 8, rows: 4, jointDeg: 0, zoneColumns: 4, splitAboveRow: 2 });
  const table = parts.surfaces.surfaces[0]!;
  const costOf = cutCosts(table, 0, zoneOfPanels(table, parts.zones), parts.runs.runOf);
  expect([1, 2, 3, 4, 5, 6, 7].map(costOf)).toEqual([3, 1, 3, 0, 3, 1, 3]);
});
