import type { NodesResults, RenderNode } from '../../../src/calc/nodes/node-result';
import { mapPixels } from '../../../src/calc/outputs/map-pixels';
import type { TestPictureInputs } from '../../../src/calc/outputs/picture/test-picture-inputs';
import type { Run, RunsResults } from '../../../src/calc/runs/run-result';
import type { PlacedPanelType, SurfaceSet, SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import type { Zone } from '../../../src/calc/zones/zone-result';

const panel = (heightMm: number, pixelsHigh: number): PlacedPanelType => ({
  panelId: 'p',
  name: 'P',
  turnDeg: 0,
  widthMm: 500,
  heightMm,
  depthMm: 80,
  pixelsWide: 100,
  pixelsHigh,
});

/** Wall A round a corner: C1 walks along +x from (0, 0), C2 turns right and walks along -y; R1 is 1 m high, R2 0.5 m, base 1 m. */
export const cornerWall: SurfaceTable = {
  surfaceId: 'wall',
  letter: 'A',
  name: 'Corner wall',
  kind: 'wall',
  count: 4,
  columns: 2,
  rows: 2,
  types: [panel(1000, 200), panel(500, 100)],
  column: Uint16Array.of(1, 1, 2, 2),
  row: Uint16Array.of(1, 2, 1, 2),
  type: Uint8Array.of(0, 1, 0, 1),
  xMm: Float64Array.of(250, 250, 500, 500),
  yMm: Float64Array.of(0, 0, -250, -250),
  zMm: Float64Array.of(1500, 2250, 1500, 2250),
  headingDeg: Float64Array.of(0, 0, -90, -90),
  canvasX: Uint32Array.of(0, 0, 100, 100),
  canvasY: Uint32Array.of(100, 0, 100, 0),
  canvasWidth: 200,
  canvasHeight: 300,
  at: Int32Array.of(0, 1, 2, 3),
};

/** Ceiling B, one column of two, 4 m up about (0, -2): as seen from below with +y up its columns count towards -x. */
export const smallCeiling: SurfaceTable = {
  surfaceId: 'ceiling',
  letter: 'B',
  name: 'Ceiling',
  kind: 'ceiling',
  count: 2,
  columns: 1,
  rows: 2,
  types: [panel(500, 100)],
  column: Uint16Array.of(1, 1),
  row: Uint16Array.of(1, 2),
  type: Uint8Array.of(0, 0),
  xMm: Float64Array.of(0, 0),
  yMm: Float64Array.of(-2250, -1750),
  zMm: Float64Array.of(4000, 4000),
  headingDeg: Float64Array.of(180, 180),
  canvasX: Uint32Array.of(0, 0),
  canvasY: Uint32Array.of(100, 0),
  canvasWidth: 100,
  canvasHeight: 200,
  at: Int32Array.of(0, 1),
};

export const cornerSurfaces: SurfaceSet = { surfaces: [cornerWall, smallCeiling], offsets: [0, 4], total: 6 };

function zone(processor: number, given: Pick<Zone, 'surfaceId' | 'letter' | 'firstColumn' | 'rows' | 'panels'>): Zone {
  const canvasHeight = given.surfaceId === 'wall' ? 300 : 200;
  return {
    ...given,
    processor,
    processorId: 'processor',
    columns: 1,
    firstRow: 1,
    canvasWidth: 100,
    canvasHeight,
    blankColumns: 0,
    breakouts: 1,
    ports: 1,
  };
}

/** A zone a column of the wall and one of the ceiling's lower panel only: the upper one is driven by none. */
export const cornerZones: readonly Zone[] = [
  zone(1, { surfaceId: 'wall', letter: 'A', firstColumn: 1, rows: 2, panels: 2 }),
  zone(2, { surfaceId: 'wall', letter: 'A', firstColumn: 2, rows: 2, panels: 2 }),
  zone(3, { surfaceId: 'ceiling', letter: 'B', firstColumn: 1, rows: 1, panels: 1 }),
];

function node(name: string, index: number, given: Pick<RenderNode, 'surfaceId' | 'letter' | 'offsetX'>): RenderNode {
  const { panels, canvasHeight } = cornerZones[index]!;
  const crop = { zone: index, processor: index + 1, x: 0, y: 0, width: 100, height: canvasHeight };
  return {
    ...given,
    name,
    itemId: null,
    mode: { rate: { frames: 24, seconds: 1 }, depthBits: 10, pictures: 1 },
    canvasWidth: 100,
    canvasHeight,
    offsetY: 0,
    crops: [crop],
    outputs: 1,
    litPixels: panels * 10_000,
    blankPixels: 0,
  };
}

/** A node a zone. */
export const cornerNodes: Pick<NodesResults, 'nodes' | 'nodeOfZone'> = {
  nodes: [
    node('N1', 0, { surfaceId: 'wall', letter: 'A', offsetX: 0 }),
    node('N2', 1, { surfaceId: 'wall', letter: 'A', offsetX: 100 }),
    node('N3', 2, { surfaceId: 'ceiling', letter: 'B', offsetX: 0 }),
  ],
  nodeOfZone: [0, 1, 2],
};

export const cornerMap = mapPixels(cornerSurfaces, cornerZones, cornerNodes);

function run(zoneIndex: number, start: number, count: number): Run {
  return {
    surfaceId: cornerZones[zoneIndex]!.surfaceId,
    zone: zoneIndex,
    port: `${zoneIndex + 1}A-01`,
    start,
    count,
    pixels: 10_000,
    share: 0.1,
    entryHeightMm: 1000,
    inReach: true,
    returnPort: null,
    returnProcessor: null,
    exitHeightMm: 2000,
  };
}

/** Up the first column, down the second, and the ceiling's lower panel alone; its upper one hangs on no port. */
export const cornerRuns: Pick<RunsResults, 'runs' | 'order' | 'runOf' | 'placeOf'> = {
  runs: [run(0, 0, 2), run(1, 2, 2), run(2, 4, 1)],
  order: Uint32Array.of(0, 1, 3, 2, 4),
  runOf: Int32Array.of(0, 0, 1, 1, 2, -1),
  placeOf: Uint16Array.of(1, 2, 2, 1, 1, 0),
};

/** All that a picture is painted from. */
export const cornerPicture: TestPictureInputs = {
  surfaces: cornerSurfaces,
  zones: cornerZones,
  runs: cornerRuns,
  nodes: cornerNodes.nodes,
  map: cornerMap,
};
