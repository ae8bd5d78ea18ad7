import { expect, test } from 'vitest';
import { schedulePixelMap } from '../../src/sheets/schedule-pixel-map';
import { cornerNodes, cornerRuns, cornerSurfaces, cornerZones } from '../calc/outputs/corner-stage';

const rest = { surfaces: [], zones: [], portsUsed: 0, portsLeast: 0, panelsPerPortMin: null, panelsPerPortMax: null };
const runs = { ...cornerRuns, ...rest, fullestPortShare: null, breakouts: 0, resting: [], existing: null };
const parts = { surfaces: cornerSurfaces, zones: cornerZones, runs };
const map = schedulePixelMap(parts, cornerNodes);

test('schedulePixelMap has the columns that were agreed, a row a panel, each leading to it', () => {
  expect(map.columns.map(({ key }) => key).join(', ')).toBe(
    'panel, surface, column, row, canvasX, canvasY, width, height, turn, node, processor, breakout, port, place',
  );
  expect(map.count).toBe(6);
  expect(Array.from({ length: 6 }, (_, row) => map.panelOf(row))).toEqual([0, 1, 2, 3, 4, 5]);
});

test('schedulePixelMap tells of a panel its place on the canvas of its node and its way there', () => {
  // Below the panel of 100 px: y 100. The zone of C2 has the canvas of N2, which begins at the panel: x 0.
  expect(map.row(0)).toEqual(['A C1 R1', 'A', 1, 1, 0, 100, 100, 200, 0, 'N1', 1, '1A', '1A-01', 1]);
  expect(map.row(3)).toEqual(['A C2 R2', 'A', 2, 2, 0, 0, 100, 100, 0, 'N2', 2, '2A', '2A-01', 1]);
});

test('schedulePixelMap leaves empty what a panel without zone or run has not', () => {
  expect(map.row(5)).toEqual(['B C1 R2', 'B', 1, 2, null, null, 100, 100, 0, null, null, null, null, null]);
});

test('schedulePixelMap states no breakout of a port on the processor itself', () => {
  const direct = cornerRuns.runs.map((run) => ({ ...run, port: '3-04' }));
  expect(
    schedulePixelMap({ ...parts, runs: { ...runs, runs: direct } }, cornerNodes)
      .row(0)
      .slice(11, 13),
  ).toEqual([null, '3-04']);
});
