import type { Run, RunsResults, ZoneRuns } from '../../src/calc/runs/run-result';
import type { Zone, ZonesResults } from '../../src/calc/zones/zone-result';
import type { Breakout } from '../../src/plan/breakout';
import type { Node } from '../../src/plan/node';
import type { Processor } from '../../src/plan/processor';

/** An invented processor on breakouts `box`, or with ports of its own where `breakoutId` is null. */
export function processorOf(id: string, breakoutId: string | null = 'box'): Processor {
  return {
    id,
    name: `Processor ${id}`,
    canvas: { pixels: 9_000_000, widest: 16_384, highest: 16_384, inputGbps: null },
    port: {
      lineMbps: 1000,
      sheetPixels: 650_000,
      lowestRateHz: 60,
      carriageBits: { at8: 24, at10: 30, at12: 36 },
      counting: 'panels',
    },
    outlets: breakoutId === null ? { kind: 'direct', ports: 16 } : { kind: 'breakouts', breakoutId, most: 4 },
    powerW: 120,
    massKg: 12,
    rackUnits: 2,
    purchase: { price: 20_000, leadDays: 30 },
  };
}

export const breakoutOf = (id = 'box'): Breakout => ({
  id,
  name: `Breakout ${id}`,
  ports: 10,
  trunkMbps: 10_000,
  powerW: 40,
  massKg: 4,
  rackUnits: 1,
  purchase: { price: 3000, leadDays: 20 },
});

export const nodeOf = (id = 'node'): Node => ({
  id,
  name: `Node ${id}`,
  outputs: 4,
  canvasPixels: null,
  powerW: 900,
  massKg: 25,
  rackUnits: 4,
  purchase: { price: 15_000, leadDays: 40 },
});

export interface ZoneShape {
  readonly surfaceId?: string;
  readonly processorId?: string;
  readonly breakouts?: number;
  /** Panels of each run. */
  readonly runs?: readonly number[];
}

export interface WiredZones {
  readonly zones: ZonesResults;
  readonly runs: RunsResults;
  readonly renderNodes: readonly { readonly itemId: string | null }[];
  readonly spareNodes: number;
}

/** Zones, one processor each, and the runs in them, as the wiring would report them, with a node `node` each and none spare. */
export function wiredZones(shapes: readonly ZoneShape[]): WiredZones {
  const zones = shapes.map(
    (shape, i): Zone => ({
      surfaceId: shape.surfaceId ?? 'wall-1',
      letter: 'A',
      processor: i + 1,
      processorId: shape.processorId ?? 'a',
      firstColumn: 1,
      columns: 1,
      firstRow: 1,
      rows: 1,
      panels: (shape.runs ?? []).reduce((a, b) => a + b, 0),
      canvasWidth: 200,
      canvasHeight: 200,
      blankColumns: 0,
      breakouts: shape.breakouts ?? 0,
      ports: (shape.runs ?? []).length,
    }),
  );
  let start = 0;
  const runs = shapes.flatMap((shape, zone) =>
    (shape.runs ?? []).map((count, r): Run => {
      start += count;
      return {
        surfaceId: shape.surfaceId ?? 'wall-1',
        zone,
        port: `${zone + 1}-${r + 1}`,
        start: start - count,
        count,
        pixels: count * 40_000,
        share: 0.5,
        entryHeightMm: 0,
        inReach: true,
        returnPort: null,
        returnProcessor: null,
        exitHeightMm: 0,
      };
    }),
  );
  const byZone = zones.map(
    (zone): ZoneRuns => ({
      surfaceId: zone.surfaceId,
      processor: zone.processor,
      way: { kind: 'columns' },
      byHand: false,
      ways: [],
      runs: zone.ports,
      ports: zone.ports,
      portsLeast: zone.ports,
      breakouts: zone.breakouts,
      entriesOutOfReach: 0,
    }),
  );
  const counts = runs.map((run) => run.count);
  return {
    renderNodes: zones.map(() => ({ itemId: 'node' })),
    spareNodes: 0,
    zones: { zones, surfaces: [], processors: zones.length },
    runs: {
      runs,
      order: Uint32Array.from({ length: start }, (_, i) => i),
      runOf: new Int32Array(start),
      placeOf: new Uint16Array(start),
      surfaces: [],
      zones: byZone,
      portsUsed: runs.length,
      portsLeast: runs.length,
      panelsPerPortMin: counts.length > 0 ? Math.min(...counts) : null,
      panelsPerPortMax: counts.length > 0 ? Math.max(...counts) : null,
      fullestPortShare: counts.length > 0 ? 0.5 : null,
      breakouts: byZone.reduce((sum, zone) => sum + zone.breakouts, 0),
      resting: [],
      existing: null,
    },
  };
}
