import type { PortsInputs } from '../../../src/calc/ports/compute-ports';
import type { RunsInputs } from '../../../src/calc/runs/compute-runs';
import type { ZoneWiring } from '../../../src/calc/runs/search/zone-wiring';
import type { SolveZone } from '../../../src/calc/runs/zone-solver';
import type { SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import { computeZones } from '../../../src/calc/zones/compute-zones';
import type { HandChange } from '../../../src/plan/hand-change';
import type { Mode } from '../../../src/plan/picture';
import type { Anchor } from '../../../src/plan/primitives';
import type { ExistingWiring } from '../../../src/plan/signal';
import { plainZones } from '../zones/plain-zones';
import { columnRuns, plainWiring } from './column-wiring';

export interface PlainRuns extends Partial<PortsInputs> {
  readonly wall?: SurfaceTable;
  readonly base?: Mode;
  readonly solve?: SolveZone;
  readonly handChanges?: readonly HandChange[];
  readonly existingWiring?: ExistingWiring | null;
}

/** Inputs of the runs chapter; every wall has one segment 's1' and every ceiling a lattice that begins at -2, -1. */
export function plainRuns(rest: PlainRuns = {}): RunsInputs {
  const given = plainZones({ solve: pairSolver, ...rest });
  const tables = given.surfaces.surfaces;
  return {
    signal: given.signal,
    surfaces: given.surfaces,
    ports: given.ports,
    zones: computeZones(given),
    solve: given.solve,
    handChanges: rest.handChanges ?? [],
    existingWiring: rest.existingWiring ?? null,
    walls: tables
      .filter(({ kind }) => kind === 'wall')
      .map(({ surfaceId, columns }) => ({
        id: surfaceId,
        path: [{ id: 's1', columns, jointDeg: 0, mixed: null, jointBeforeDeg: 0 }],
      })),
    ceilings: {
      ceilings: tables
        .filter(({ kind }) => kind === 'ceiling')
        .map((table) => ({
          ceilingId: table.surfaceId,
          letter: table.letter,
          name: table.name,
          table,
          firstLatticeColumn: -2,
          firstLatticeRow: -1,
          outlineMm: [],
          areaM2: 0,
          pixels: 0,
          coverShare: null,
          gapLeastMm: null,
          gapGreatestMm: null,
        })),
    },
  };
}

/** A panel of segment 's1' of wall 'a'. */
export const anchor = (column: number, row: number, surfaceId = 'a', segmentId: string | null = 's1'): Anchor => ({
  surfaceId,
  segmentId,
  column,
  row,
});

/** Offers two ways: every column by itself, which it chooses, and columns two by two up and down where a port takes both. */
export const pairSolver: SolveZone = (grid, limits) => {
  const columns = plainWiring(grid, limits, { kind: 'columns' }, columnRuns(grid, limits));
  const pairs = pairedRuns(grid.rows, columnRuns(grid, limits));
  const paired = plainWiring(grid, limits, { kind: 'folded', wide: 2 }, pairs);
  const fits = paired.pixels.every((pixels) => pixels <= limits.usablePixels) && paired.mostPanels <= limits.panelsMost;
  const ways: ZoneWiring[] = fits ? [columns, paired] : [columns];
  return { chosen: columns, ways, peers: [columns], least: Math.min(...ways.map(({ ports }) => ports)) };
};

function pairedRuns(rows: number, runs: readonly number[][]): number[][] {
  const paired: number[][] = [];
  for (let i = 0; i < runs.length; i++) {
    const run = runs[i]!;
    const next = runs[i + 1];
    if (next !== undefined && run.length === rows && next.length === rows) {
      paired.push([...run, ...[...next].reverse()]);
      i++;
    } else paired.push(run);
  }
  return paired;
}
