import { expect, test } from 'vitest';
import { listDevices } from '../../../src/calc/nodes/list-devices';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainMode, plainNodes, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });
const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 4, bands: [{ type: plainType(100), rows: 4 }] });

test('listDevices names nodes with the spare ones behind, processors, cameras and trackers, each at its rate', () => {
  const { laid, picture } = plainNodes({
    tables: [wall, ceiling],
    zones: [...zonesOf(wall, 3), ...zonesOf(ceiling, 2, 4, 2)],
    feed: { zonesANode: 2 },
    base: plainMode(24),
    bySurface: [{ surfaceId: 'b', mode: plainMode(48) }],
  });
  const devices = listDevices({
    nodes: laid.nodes,
    spareNodes: 1,
    surfaces: picture.surfaces,
    cameraRate: { frames: 24, seconds: 1 },
    cameras: 2,
    trackers: 1,
  });
  expect(devices.map(({ name, kind, rate }) => [name, kind, rate.frames])).toEqual([
    ['N1', 'node', 24],
    ['N2', 'node', 48],
    ['N3', 'node', 24],
    ['P1', 'processor', 24],
    ['P2', 'processor', 24],
    ['P3', 'processor', 48],
    ['P4', 'processor', 48],
    ['Camera 1', 'camera', 24],
    ['Camera 2', 'camera', 24],
    ['Tracker 1', 'tracker', 24],
  ]);
});
