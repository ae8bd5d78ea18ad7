import { expect, test } from 'vitest';
import { evenOutZones } from '../../../src/calc/nodes/even-out-zones';
import { setFieldsFix } from '../../../src/calc/set-fields-fix';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainNode, plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 15, bands: [{ type: plainType(100), rows: 4 }] });
const padded = setFieldsFix('Make all canvases equal', 'equal canvases', []);
const evened = (zoneColumns: number, zonesANode: number, item: typeof plainNode | null = null) => {
  const zones = zonesOf(wall, zoneColumns);
  const { results } = plainResults({ tables: [wall], zones, feed: { zonesANode, equalCanvases: false } });
  return evenOutZones([], wall.surfaceId, results.nodes, item, padded);
};

test('evenOutZones finds the count nearest to the one there is that divides evenly', () => {
  // Five zones, two a node: 2, 2, 1. One a node divides evenly; all five on one node are no several.
  expect(evened(3, 2)).toMatchObject({ label: 'A node for each zone', otherwise: padded });
  // 15 zones, seven a node are shared out as 5, 5, 5 already; four a node as 4, 4, 4, 3: three and
  // five are as near and divide evenly, and the smaller canvas asks less of a link.
  expect(evened(1, 4)).toMatchObject({ label: 'At most 3 zones on a node' });
});

test('evenOutZones takes no count that the node does not send or has no outputs for', () => {
  // 8 and 7 of 15: five are nearest, whose canvas of 500 x 400 has 200,000 pixels; three have 120,000.
  expect(evened(1, 8)?.label).toBe('At most 5 zones on a node');
  expect(evened(1, 8, { ...plainNode, outputs: 8, canvasPixels: 199_999 })?.label).toBe('At most 3 zones on a node');
  expect(evened(1, 8, { ...plainNode, outputs: 4 })?.label).toBe('At most 3 zones on a node');
});

test('evenOutZones has none where zones differ in width', () => {
  expect(evened(4, 1)).toBeNull();
});
