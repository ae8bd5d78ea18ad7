import type { CeilingResult } from '../../src/calc/ceilings/ceiling-result';
import type { Circuit, PowerResults } from '../../src/calc/power/power-result';
import type { Run, RunsResults } from '../../src/calc/runs/run-result';
import type { SurfaceSet, SurfaceTable } from '../../src/calc/surfaces/surface-table';
import type { WallResult } from '../../src/calc/walls/wall-result';
import type { Zone } from '../../src/calc/zones/zone-result';
import type { StageParts } from '../../src/sheets/stage-parts';
import { ceilingOf } from './ceiling-fixture';
import { wallOf } from './wall-fixture';

export interface FixtureOptions {
  readonly columns: number;
  readonly rows: number;
  readonly jointDeg: number;
  readonly baseMm?: number;
  readonly hole?: { readonly column: number; readonly row: number; readonly columns: number; readonly rows: number };
  /** Columns of a zone at most. */
  readonly zoneColumns?: number;
  /** Above this row each column is a run of its own, below it runs fold over two columns. */
  readonly splitAboveRow?: number;
  readonly ceilingDiameterMm?: number;
  readonly ceilingTurnDeg?: number;
  readonly lengths?: StageParts['lengths'];
}

/**
 * A stage built by hand, without the chapters of calc: one wall of 500 x 500 x 90 mm panels on a regular polygon about the
 * origin, if wished a round ceiling; zones of equal width, split wiring, a circuit for each column.
 */
export function stageFixture(options: FixtureOptions): StageParts {
  const wall = wallOf(options);
  const ceilings: CeilingResult[] =
    options.ceilingDiameterMm === undefined ? [] : [ceilingOf(options.ceilingDiameterMm, options.ceilingTurnDeg ?? 0)];
  const tables = [wall.table, ...ceilings.map((ceiling) => ceiling.table)];
  const surfaces: SurfaceSet = {
    surfaces: tables,
    offsets: tables.map((_, s) => tables.slice(0, s).reduce((total, table) => total + table.count, 0)),
    total: tables.reduce((total, table) => total + table.count, 0),
  };
  const zones: Zone[] = [];
  for (const table of tables) zones.push(...zonesOf(table, options.zoneColumns ?? 13, zones.length));
  return {
    surfaces,
    walls: [wall] satisfies WallResult[],
    ceilings,
    zones,
    runs: runsOf(surfaces, zones, options.splitAboveRow ?? Math.min(4, options.rows)),
    power: powerOf(surfaces),
    hall: { lengthMm: 32_000, widthMm: 28_000, clearHeightMm: 9_000, walkwayMm: 1_200 },
    vehicle: { widthMm: 2_550, heightMm: 4_000 },
    reachMm: 2_100,
    ceilingEntry: 'bottom',
    lengths: options.lengths ?? 'metric',
    plannedCeilings: [],
  };
}

function zonesOf(table: SurfaceTable, most: number, before: number): readonly Zone[] {
  const count = Math.ceil(table.columns / most);
  const width = Math.ceil(table.columns / count);
  return Array.from({ length: count }, (_, k): Zone => {
    const firstColumn = k * width + 1;
    const columns = Math.min(width, table.columns - k * width);
    const panels = table.at.subarray((firstColumn - 1) * table.rows, (firstColumn - 1 + columns) * table.rows);
    return {
      surfaceId: table.surfaceId,
      letter: table.letter,
      processor: before + k + 1,
      processorId: 'processor',
      firstColumn,
      columns,
      firstRow: 1,
      rows: table.rows,
      panels: panels.filter((local) => local >= 0).length,
      canvasWidth: width * 216,
      canvasHeight: table.rows * 216,
      blankColumns: width - columns,
      breakouts: 2,
      ports: 20,
    };
  });
}

/** Panels of a column between two rows, upwards, cut where a panel is missing. */
function pieces(table: SurfaceTable, column: number, from: number, to: number): number[][] {
  const found: number[][] = [[]];
  for (let row = from; row <= to; row++) {
    const local = table.at[(column - 1) * table.rows + row - 1]!;
    if (local >= 0) found.at(-1)!.push(local);
    else if (found.at(-1)!.length > 0) found.push([]);
  }
  return found.filter((piece) => piece.length > 0);
}

function chainsOf(table: SurfaceTable, zone: Zone, splitAboveRow: number): number[][] {
  const split = Math.min(splitAboveRow, table.rows);
  const last = zone.firstColumn + zone.columns - 1;
  const chains: number[][] = [];
  for (let column = zone.firstColumn; column <= last; column++) {
    chains.push(...pieces(table, column, table.kind === 'wall' ? split + 1 : 1, table.rows));
  }
  if (table.kind === 'ceiling') return chains;
  for (let column = zone.firstColumn; column <= last; column += 2) {
    const down = pieces(table, column, 1, split).map((piece) => piece.reverse());
    const up = column === last ? [] : pieces(table, column + 1, 1, split);
    if (down.length === 1 && up.length === 1) chains.push([...down[0]!, ...up[0]!]);
    else chains.push(...down, ...up);
  }
  return chains;
}

function runsOf(surfaces: SurfaceSet, zones: readonly Zone[], split: number): RunsResults {
  const order: number[] = [];
  const runs: Run[] = [];
  const runOf = new Int32Array(surfaces.total).fill(-1);
  const placeOf = new Uint16Array(surfaces.total);
  zones.forEach((zone, z) => {
    const s = surfaces.surfaces.findIndex((table) => table.surfaceId === zone.surfaceId);
    const table = surfaces.surfaces[s]!;
    chainsOf(table, zone, split).forEach((chain, k) => {
      chain.forEach((local, place) => {
        runOf[surfaces.offsets[s]! + local] = runs.length;
        placeOf[surfaces.offsets[s]! + local] = place + 1;
      });
      const entryHeightMm = table.zMm[chain[0]!]! - 250;
      runs.push({
        surfaceId: table.surfaceId,
        zone: z,
        port: `${zone.processor}${'ABCDEFGH'[Math.floor(k / 10)]}-${String((k % 10) + 1).padStart(2, '0')}`,
        start: order.length,
        count: chain.length,
        pixels: chain.length * 216 * 216,
        share: (chain.length * 216 * 216) / 520_000,
        entryHeightMm,
        inReach: entryHeightMm <= 2_100,
        returnPort: null,
        returnProcessor: null,
        exitHeightMm: entryHeightMm,
      });
      order.push(...chain.map((local) => surfaces.offsets[s]! + local));
    });
  });
  return {
    runs,
    order: Uint32Array.from(order),
    runOf,
    placeOf,
    surfaces: [],
    zones: [],
    existing: null,
    portsUsed: runs.length,
    portsLeast: runs.length,
    panelsPerPortMin: null,
    panelsPerPortMax: null,
    fullestPortShare: null,
    breakouts: zones.length * 2,
    resting: [],
  };
}

/** A circuit for every column of every surface, legs in turn, 48 circuits to a distro. */
function powerOf(surfaces: SurfaceSet): PowerResults {
  const circuits: Circuit[] = [];
  const order: number[] = [];
  const circuitOf = new Int32Array(surfaces.total).fill(-1);
  surfaces.surfaces.forEach((table, s) => {
    for (let column = 1; column <= table.columns; column++) {
      for (const piece of pieces(table, column, 1, table.rows)) {
        for (const local of piece) circuitOf[surfaces.offsets[s]! + local] = circuits.length;
        circuits.push({
          name: `D${Math.floor(circuits.length / 48) + 1}-${(circuits.length % 48) + 1}`,
          distro: Math.floor(circuits.length / 48) + 1,
          surfaceId: table.surfaceId,
          leg: (['L1', 'L2', 'L3'] as const)[circuits.length % 3]!,
          start: order.length,
          count: piece.length,
          watts: piece.length * 150,
          currentA: (piece.length * 150) / (230 * 0.95),
          limitA: 12.8,
          entryHeightMm: table.zMm[piece[0]!]! - 250,
        });
        order.push(...piece.map((local) => surfaces.offsets[s]! + local));
      }
    }
  });
  return {
    circuits,
    order: Uint32Array.from(order),
    circuitOf,
    distros: [],
    points: [],
    legs: [],
    typicalLegs: [],
    worstLegA: null,
    neutralA: null,
    loads: [],
    signalW: 0,
    maxW: surfaces.total * 150,
    typicalW: surfaces.total * 50,
    blackW: surfaces.total * 30,
    panelsACircuit: [],
  };
}
