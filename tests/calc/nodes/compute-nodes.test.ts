import { expect, test } from 'vitest';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });

test('computeNodes puts canvases, spare nodes, delay, sync and addresses side by side', () => {
  const { inputs, results } = plainResults({
    tables: [wall],
    zones: zonesOf(wall, 3),
    feed: { spareNodes: 2 },
    cameras: 3,
  });
  expect(results.nodes).toBe(inputs.laid.nodes);
  expect(results.spareNodes).toBe(2);
  expect(results.delays.map(({ surfaceId }) => surfaceId)).toEqual(['a']);
  // Two nodes and two spare ones, two processors, three cameras, one tracker.
  expect(results.addresses.map(({ device }) => device)).toEqual([
    'N1',
    'N2',
    'N3',
    'N4',
    'P1',
    'P2',
    'Camera 1',
    'Camera 2',
    'Camera 3',
    'Tracker 1',
  ]);
  // Ten devices on splitters of eight outlets: two of them.
  expect(results.sync.filter(({ kind }) => kind === 'splitter')).toHaveLength(2);
  expect(results.sync.filter(({ kind }) => kind !== 'splitter').map(({ to }) => to)).toEqual(
    results.addresses.map(({ device }) => device),
  );
});

test('computeNodes has nothing to spare, to sync or to address where there is no node', () => {
  const { results } = plainResults({ tables: [wall], zones: [], feed: { spareNodes: 2 } });
  expect(results).toMatchObject({ nodes: [], spareNodes: 0, sync: [], addresses: [] });
});
