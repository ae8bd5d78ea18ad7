import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareCanvas } from '../../../src/calc/nodes/share-canvas';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 12, bands: [{ type: plainType(100), rows: 8 }] });
/** Zones of 3 columns and 4 rows: four across, two up, a node each at first. */
const nodes = plainResults({ tables: [wall], zones: zonesOf(wall, 3, 4) }).results.nodes;

test('shareCanvas: neighbours of a row of zones come together first, whole rows where more may', () => {
  expect(shareCanvas(nodes, 1)).toEqual({ nodes: 8, zones: 1, width: 300, height: 400, isEqual: true });
  expect(shareCanvas(nodes, 2)).toEqual({ nodes: 4, zones: 2, width: 600, height: 400, isEqual: true });
  // Three of four in a row: two nodes of two, as even as it goes.
  expect(shareCanvas(nodes, 3)).toEqual({ nodes: 4, zones: 2, width: 600, height: 400, isEqual: true });
  expect(shareCanvas(nodes, 8)).toEqual({ nodes: 1, zones: 8, width: 1200, height: 800, isEqual: true });
});

test('shareCanvas says that canvases differ, and gives what holds the widest', () => {
  // Zones of 5, 5 and 2 columns.
  const three = plainResults({ tables: [wall], zones: zonesOf(wall, 5) }).results.nodes;
  expect(shareCanvas(three, 1)).toEqual({ nodes: 3, zones: 1, width: 500, height: 800, isEqual: false });
});

test('shareCanvas comes to the canvases that nodes have when they share so', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 8 }),
      fc.integer({ min: 1, max: 12 }),
      (columns, rows, most) => {
        const stage = { tables: [wall], zones: zonesOf(wall, columns, rows) };
        const found = shareCanvas(plainResults(stage).results.nodes, most);
        const laid = plainResults({ ...stage, feed: { zonesANode: most, equalCanvases: false } }).results;
        expect(found).toEqual({
          nodes: laid.nodes.length,
          zones: Math.max(...laid.nodes.map(({ crops }) => crops.length)),
          width: laid.surfaces[0]!.canvasWidth,
          height: laid.surfaces[0]!.canvasHeight,
          isEqual: laid.surfaces[0]!.isEqual,
        });
      },
    ),
    { numRuns: 60 },
  );
});
