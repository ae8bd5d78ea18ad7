import { expect, test } from 'vitest';
import { scheduleNodes } from '../../src/sheets/schedule-nodes';
import { plainResults, zonesOf } from '../calc/nodes/plain-nodes';
import { plainSurface, plainType } from '../calc/zones/plain-surface';

const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 10, bands: [{ type: plainType(100), rows: 8 }] });
const zones = zonesOf(ceiling, 5, 4);

test('scheduleNodes has a row for each processor with its crop, and counts nodes and processors', () => {
  const { inputs, results } = plainResults({ tables: [ceiling], zones, feed: { zonesANode: 2 } });
  const schedule = scheduleNodes({ surfaces: inputs.surfaces, zones, nodes: results.nodes });
  expect(Array.from({ length: schedule.count }, (_, i) => schedule.row(i))).toEqual([
    ['N1', 'B', 1, 0, 0, 500, 400, 1000, 400, 0, 400],
    ['N1', 'B', 2, 500, 0, 500, 400, 1000, 400, 0, 400],
    ['N2', 'B', 3, 0, 0, 500, 400, 1000, 400, 0, 0],
    ['N2', 'B', 4, 500, 0, 500, 400, 1000, 400, 0, 0],
  ]);
  expect(schedule.totals?.slice(0, 3)).toEqual(['2 nodes', '4 processors', null]);
  expect(schedule.totals).toHaveLength(schedule.columns.length);
  expect(schedule.columns).toHaveLength(schedule.row(0).length);
});

test('scheduleNodes leads to the lower left panel of the zone', () => {
  const { inputs, results } = plainResults({ tables: [ceiling], zones });
  const schedule = scheduleNodes({ surfaces: inputs.surfaces, zones, nodes: results.nodes });
  // Column 6, row 5 of eight rows a column: 5 x 8 + 4.
  expect(schedule.panelOf(3)).toBe(44);
});
