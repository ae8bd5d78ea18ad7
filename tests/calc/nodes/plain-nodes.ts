import { computeNodes, type NodesInputs } from '../../../src/calc/nodes/compute-nodes';
import { layOutNodes, type ZonedStage } from '../../../src/calc/nodes/lay-out-nodes';
import type { NodesResults } from '../../../src/calc/nodes/node-result';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import type { SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import type { Zone } from '../../../src/calc/zones/zone-result';
import { defaultAddresses } from '../../../src/plan/addresses';
import { defaultDelay } from '../../../src/plan/delay';
import { defaultFeed } from '../../../src/plan/feed';
import type { Mode } from '../../../src/plan/picture';
import { defaultSync } from '../../../src/plan/sync';
import { setOf } from '../zones/plain-surface';

/** Zones of so many columns and rows over a whole surface, one processor each, the lowest first. */
export function zonesOf(table: SurfaceTable, columns: number, rows = table.rows, before = 0): Zone[] {
  const zones: Zone[] = [];
  for (let firstRow = 1; firstRow <= table.rows; firstRow += rows) {
    for (let firstColumn = 1; firstColumn <= table.columns; firstColumn += columns) {
      zones.push({
        surfaceId: table.surfaceId,
        letter: table.letter,
        processor: before + zones.length + 1,
        processorId: 'proc',
        firstColumn,
        columns: Math.min(columns, table.columns - firstColumn + 1),
        firstRow,
        rows: Math.min(rows, table.rows - firstRow + 1),
        panels: 1,
        canvasWidth: 0,
        canvasHeight: 0,
        blankColumns: 0,
        breakouts: 0,
        ports: 1,
      });
    }
  }
  return zones;
}

export const plainMode = (frames: number, depthBits: Mode['depthBits'] = 10, pictures = 1): Mode => ({
  rate: { frames, seconds: 1 },
  depthBits,
  pictures,
});

export const plainNode = { id: 'node', name: 'Node', outputs: 4, canvasPixels: 9_000_000 };

interface PlainNodes extends Partial<Omit<NodesInputs, 'feed' | 'signal' | 'surfaces' | 'picture' | 'laid' | 'zones'>> {
  readonly tables: readonly SurfaceTable[];
  readonly zones: readonly Zone[];
  /** Widths that zones may have. */
  readonly cuts?: NodesInputs['zones']['surfaces'];
  readonly feed?: Partial<NodesInputs['feed']>;
  readonly signal?: NodesInputs['signal'];
  readonly base?: Mode;
  readonly alsoServe?: readonly Mode[];
  readonly bySurface?: readonly { readonly surfaceId: string; readonly mode: Mode }[];
}

/** Inputs of the chapter for surfaces and zones laid out by hand, with one node in the catalogue that feeds them. */
export function plainNodes({ tables, zones, base = plainMode(60), ...rest }: PlainNodes): NodesInputs {
  const surfaces = setOf(...tables);
  const alsoServe = (rest.alsoServe ?? []).map((mode, i) => ({ id: `also-${i}`, mode, surfaceIds: null }));
  const picture = computePicture({
    picture: { base, bySurface: [...(rest.bySurface ?? [])], alsoServe },
    surfaces,
  });
  const feed = { ...defaultFeed, ...rest.feed };
  const signal = rest.signal ?? { nodeId: 'node', bySurface: [] };
  const nodeItems = rest.nodeItems ?? [plainNode];
  const stage: ZonedStage = { nodeItems, surfaces, picture, zones };
  return {
    feed,
    signal,
    nodeItems,
    delay: rest.delay ?? defaultDelay,
    sync: rest.sync ?? defaultSync,
    addresses: rest.addresses ?? defaultAddresses,
    cameras: rest.cameras ?? 1,
    cameraRate: base.rate,
    surfaces,
    picture,
    zones: { zones: [...zones], surfaces: rest.cuts ?? [] },
    laid: layOutNodes(feed, signal, stage),
  };
}

/** Inputs and what they come to. */
export function plainResults(rest: PlainNodes): { readonly inputs: NodesInputs; readonly results: NodesResults } {
  const inputs = plainNodes(rest);
  return { inputs, results: computeNodes(inputs) };
}
