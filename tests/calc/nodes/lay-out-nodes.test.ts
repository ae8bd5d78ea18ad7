import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { NodesLaidOut } from '../../../src/calc/nodes/lay-out-nodes';
import type { SurfaceSet } from '../../../src/calc/surfaces/surface-table';
import { wiredPlan } from '../../arbitraries/wired-plan';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainMode, plainNodes, zonesOf } from './plain-nodes';

const ring = plainSurface({ columns: 143, bands: [{ type: plainType(216), rows: 13 }] });
const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 10, bands: [{ type: plainType(100), rows: 8 }] });

// Common practice, no source: one processor, one node, one canvas for a wall; 11 zones of 13 columns and 13 rows of
// 216 x 216 panels, 2808 x 2808 each.
test('layOutNodes gives 11 zones of 13 columns a node each with a canvas of 2808 x 2808', () => {
  const { laid } = plainNodes({ tables: [ring], zones: zonesOf(ring, 13) });
  expect(laid.nodes).toHaveLength(11);
  expect(new Set(laid.nodes.map(({ canvasWidth, canvasHeight }) => `${canvasWidth}x${canvasHeight}`))).toEqual(
    new Set(['2808x2808']),
  );
  expect(laid.nodes.map(({ offsetX }) => offsetX)).toEqual(Array.from({ length: 11 }, (_, i) => i * 2808));
  expect(laid.nodes.map(({ blankPixels }) => blankPixels)).toEqual(new Array(11).fill(0));
  expect(laid.nodes[2]).toMatchObject({
    name: 'N3',
    itemId: 'node',
    outputs: 1,
    litPixels: 2808 * 2808,
    crops: [{ zone: 2, processor: 3, x: 0, y: 0, width: 2808, height: 2808 }],
  });
  expect(laid.surfaces).toEqual([{ surfaceId: 'a', nodes: 11, canvasWidth: 2808, canvasHeight: 2808, isEqual: true }]);
});

// Common practice, no source: four ceiling processors on one computer, all given the same canvas, each looking at its own
// quadrant. 10 x 8 panels of 100 px; y counts down from the top row, so the zones of rows 1 to 4 look at its lower half.
test('layOutNodes puts four ceiling processors on one node, each on its quadrant of the same canvas', () => {
  const { laid } = plainNodes({
    tables: [ceiling],
    zones: zonesOf(ceiling, 5, 4),
    feed: { bySurface: [{ surfaceId: 'b', zonesANode: null, linkId: null, canvas: null }] },
  });
  expect(laid.nodes).toHaveLength(1);
  expect(laid.nodes[0]).toMatchObject({ canvasWidth: 1000, canvasHeight: 800, outputs: 4, blankPixels: 0 });
  expect(laid.nodes[0]?.crops.map(({ processor, x, y, width, height }) => [processor, x, y, width, height])).toEqual([
    [1, 0, 400, 500, 400],
    [2, 500, 400, 500, 400],
    [3, 0, 0, 500, 400],
    [4, 500, 0, 500, 400],
  ]);
  expect(laid.nodeOfZone).toEqual([0, 0, 0, 0]);
});

test('layOutNodes pads the last canvas of a surface to the others only where they are to be equal', () => {
  // 10 columns of 100 px in zones of 4: 400, 400 and 200 px wide; 800 high.
  const stage = { tables: [ceiling], zones: zonesOf(ceiling, 4) };
  const widths = (equalCanvases: boolean) =>
    plainNodes({ ...stage, feed: { equalCanvases } }).laid.nodes.map(({ canvasWidth }) => canvasWidth);
  expect(widths(true)).toEqual([400, 400, 400]);
  expect(widths(false)).toEqual([400, 400, 200]);
  expect(plainNodes({ ...stage, feed: { equalCanvases: true } }).laid.nodes[2]).toMatchObject({
    litPixels: 160_000,
    blankPixels: 160_000,
    crops: [{ x: 0, y: 0, width: 200, height: 800 }],
  });
  expect(plainNodes({ ...stage, feed: { equalCanvases: false } }).laid.surfaces[0]?.isEqual).toBe(false);
});

test('layOutNodes sends the canvas stated for a surface, but never less than its zones need', () => {
  const stated = (width: number, height: number) =>
    plainNodes({
      tables: [ceiling],
      zones: zonesOf(ceiling, 5),
      feed: { bySurface: [{ surfaceId: 'b', zonesANode: 1, linkId: null, canvas: { width, height } }] },
    }).laid.nodes.map(({ canvasWidth, canvasHeight }) => [canvasWidth, canvasHeight]);
  expect(stated(1920, 1080)).toEqual([
    [1920, 1080],
    [1920, 1080],
  ]);
  expect(stated(300, 1080)).toEqual([
    [500, 1080],
    [500, 1080],
  ]);
});

test('layOutNodes numbers nodes through the stage and takes each surface by its own count and item', () => {
  const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });
  const own = { processorId: 'proc', nodeId: 'large', zoneColumnsMost: null, returns: null, zonesUp: null };
  const { laid } = plainNodes({
    tables: [wall, ceiling],
    zones: [...zonesOf(wall, 2), ...zonesOf(ceiling, 5, 8, 3)],
    feed: { zonesANode: 2, bySurface: [{ surfaceId: 'b', zonesANode: 1, linkId: null, canvas: null }] },
    signal: { nodeId: 'gone', bySurface: [{ surfaceId: 'b', ...own }] },
    nodeItems: [{ id: 'large', name: 'Large', outputs: 4, canvasPixels: null }],
  });
  expect(laid.nodes.map(({ name, letter, itemId, outputs }) => [name, letter, itemId, outputs])).toEqual([
    ['N1', 'A', null, 2],
    ['N2', 'A', null, 1],
    ['N3', 'B', 'large', 1],
    ['N4', 'B', 'large', 1],
  ]);
  expect(laid.nodeOfZone).toEqual([0, 0, 1, 2, 3]);
});

test('layOutNodes sends the served mode that weighs most: pictures a second times depth', () => {
  const wall = plainSurface({ columns: 2, bands: [{ type: plainType(100), rows: 2 }] });
  const sent = (...alsoServe: ReturnType<typeof plainMode>[]) =>
    plainNodes({ tables: [wall], zones: zonesOf(wall, 2), base: plainMode(24, 12), alsoServe }).laid.nodes[0]?.mode;
  expect(sent()).toEqual(plainMode(24, 12));
  // 24 x 12 = 288; 60 x 8 = 480; 24 x 2 x 10 = 480, slower.
  expect(sent(plainMode(24, 10, 2), plainMode(60, 8))).toEqual(plainMode(60, 8));
  // 48 x 12 = 576.
  expect(sent(plainMode(60, 8), plainMode(24, 12, 2))).toEqual(plainMode(24, 12, 2));
});

test('layOutNodes has no node where there is no zone', () => {
  expect(plainNodes({ tables: [ring], zones: [] }).laid).toEqual({ nodes: [], nodeOfZone: [], surfaces: [] });
});

/** Crops of a canvas never overlap, lie on it, and every pixel of a panel lies in exactly one of all. */
function expectEachPixelOnce({ surfaces }: SurfaceSet, zones: number, { nodes, nodeOfZone }: NodesLaidOut): void {
  const fed = nodes.flatMap(({ crops }) => crops.map(({ zone }) => zone));
  expect(fed.sort((a, b) => a - b)).toEqual(Array.from({ length: zones }, (_, i) => i));
  for (const [node, { crops, canvasWidth, canvasHeight, litPixels, blankPixels }] of nodes.entries()) {
    expect(litPixels + blankPixels).toBe(canvasWidth * canvasHeight);
    for (const [i, a] of crops.entries()) {
      expect(nodeOfZone[a.zone]).toBe(node);
      expect(a.x >= 0 && a.y >= 0 && a.x + a.width <= canvasWidth && a.y + a.height <= canvasHeight).toBe(true);
      for (const b of crops.slice(i + 1)) expect(shared(a, b)).toBe(0);
    }
  }
  for (const table of surfaces) {
    const own = nodes.filter(({ surfaceId }) => surfaceId === table.surfaceId);
    const crops = own.flatMap((node) =>
      node.crops.map((crop) => ({ ...crop, x: node.offsetX + crop.x, y: node.offsetY + crop.y })),
    );
    if (crops.length === 0) continue;
    for (let panel = 0; panel < table.count; panel++) {
      const { pixelsWide: width, pixelsHigh: height } = table.types[table.type[panel]!]!;
      const pixels = { x: table.canvasX[panel]!, y: table.canvasY[panel]!, width, height };
      const inEach = crops.map((crop) => shared(crop, pixels)).filter((part) => part > 0);
      expect(inEach).toEqual([width * height]);
    }
  }
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Pixels that two rectangles have in common. */
function shared(a: Rectangle, b: Rectangle): number {
  const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return Math.max(0, wide) * Math.max(0, high);
}

const most = fc.option(fc.integer({ min: 1, max: 6 }), { nil: null });

test('layOutNodes of any zones with holes and unlike bands: every pixel of a panel lies in exactly one crop', () => {
  const size = fc.integer({ min: 1, max: 9 });
  fc.assert(
    fc.property(
      fc.record({ columns: size, low: size, high: size, wide: size, up: size, gap: fc.integer({ min: 2, max: 7 }) }),
      most,
      fc.boolean(),
      ({ columns, low, high, wide, up, gap }, zonesANode, equalCanvases) => {
        const table = plainSurface({
          columns,
          bands: [
            { type: plainType(100), rows: low },
            { type: plainType(60), rows: high },
          ],
          isHole: (column, row) => (column * 3 + row) % gap === 0,
        });
        const zones = zonesOf(table, wide, up).filter(({ firstColumn, columns: across, firstRow, rows }) =>
          [...table.column.keys()].some((panel) => {
            const column = table.column[panel]! - firstColumn;
            const row = table.row[panel]! - firstRow;
            return column >= 0 && column < across && row >= 0 && row < rows;
          }),
        );
        const { laid, surfaces } = plainNodes({ tables: [table], zones, feed: { zonesANode, equalCanvases } });
        expectEachPixelOnce(surfaces, zones.length, laid);
      },
    ),
  );
});

test('layOutNodes of any plan: every pixel of a panel lies in exactly one crop', () => {
  let seen = 0;
  fc.assert(
    fc.property(wiredPlan, most, fc.boolean(), (plan, zonesANode, equalCanvases) => {
      const feed = { ...plan.feed, zonesANode, equalCanvases };
      const { surfaces, zones, nodes } = createEvaluator().evaluate({ ...plan, feed });
      if (zones.results.zones.length > 0) seen++;
      expectEachPixelOnce(surfaces, zones.results.zones.length, nodes.results);
    }),
    { numRuns: 12 },
  );
  expect(seen).toBeGreaterThan(0);
});
