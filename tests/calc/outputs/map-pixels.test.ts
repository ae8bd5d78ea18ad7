import { expect, test } from 'vitest';
import { mapPixels } from '../../../src/calc/outputs/map-pixels';
import { cornerMap, cornerNodes, cornerSurfaces, cornerZones } from './corner-stage';

test('mapPixels gives every panel its zone, its node and its place on that node’s canvas', () => {
  expect([...cornerMap.zoneOf]).toEqual([0, 0, 1, 1, 2, -1]);
  expect([...cornerMap.nodeOf]).toEqual([0, 0, 1, 1, 2, -1]);
  // C2 begins at x 100 of the wall, where the canvas of N2 begins: 100 - 100. y counts down from R2, which is 100 high.
  expect([...cornerMap.x]).toEqual([0, 0, 0, 0, 0, 0]);
  expect([...cornerMap.y]).toEqual([100, 0, 100, 0, 100, 0]);
});

test('mapPixels leaves a panel without a node where its zone has none', () => {
  const map = mapPixels(cornerSurfaces, cornerZones, { nodes: cornerNodes.nodes, nodeOfZone: [0] });
  expect([...map.zoneOf]).toEqual([0, 0, 1, 1, 2, -1]);
  expect([...map.nodeOf]).toEqual([0, 0, -1, -1, -1, -1]);
});

test('mapPixels takes several zones on one canvas, each panel at its place on it', () => {
  const [wide] = cornerNodes.nodes;
  const shared = { nodes: [{ ...wide!, canvasWidth: 200 }], nodeOfZone: [0, 0] };
  const map = mapPixels(cornerSurfaces, cornerZones, shared);
  expect([...map.nodeOf]).toEqual([0, 0, 0, 0, -1, -1]);
  expect([...map.x].slice(0, 4)).toEqual([0, 0, 100, 100]);
});
