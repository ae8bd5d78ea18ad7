import { expect, test } from 'vitest';
import { scheduleNodesDelay } from '../../src/sheets/schedule-nodes-delay';
import { plainMode, plainResults, zonesOf } from '../calc/nodes/plain-nodes';
import { plainSurface, plainType } from '../calc/zones/plain-surface';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });
const stage = { tables: [wall], zones: zonesOf(wall, 6), base: plainMode(25) };

test('scheduleNodesDelay lists the steps of each surface and what they come to', () => {
  const steps = [
    { id: 'a', name: 'Tracking', frames: 0, ms: 8, surfaceIds: null },
    { id: 'b', name: 'Render', frames: 2, ms: 0, surfaceIds: null },
  ];
  const { inputs, results } = plainResults({ ...stage, delay: { steps, mostMs: null } });
  const schedule = scheduleNodesDelay({ surfaces: inputs.surfaces, delays: results.delays });
  // Two frames of 25 a second are 80 ms; 88 ms are 2.2 frames.
  expect(Array.from({ length: schedule.count }, (_, i) => schedule.row(i))).toEqual([
    ['A', 'Tracking', 0, 0.008, 0.008],
    ['A', 'Render', 2, 0, 0.08],
    ['A', 'In all', 2.2, null, 0.088],
  ]);
});

test('scheduleNodesDelay has no row where no step is stated', () => {
  const { inputs, results } = plainResults({ ...stage, delay: { steps: [], mostMs: null } });
  expect(scheduleNodesDelay({ surfaces: inputs.surfaces, delays: results.delays }).count).toBe(0);
});
