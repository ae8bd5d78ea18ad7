import type { Plan } from '../../plan/plan';
import { exactFactors } from '../../units/exact-factors';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import type { Zone } from '../zones/zone-result';
import type { RunsResults } from './run-result';

/** How long a cable must be at least, and the stock length that is taken; null: longer than any. */
export interface CableLength {
  readonly leastMm: number;
  readonly stockMm: number | null;
}

/** Cables of one run: from its port to its entry, and from its last panel back; null without a return, or where the way to that port leaves the surface. */
export interface HomeRunLengths {
  readonly home: CableLength;
  readonly back: CableLength | null;
}

/** Lengths that cables are kept in. Common practice, no source, from memory. */
const stock = {
  metric: { unitMm: 1000, lengths: [2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100] },
  feet: { unitMm: exactFactors.mmAFoot, lengths: [5, 10, 15, 25, 50, 75, 100, 150, 200, 300] },
} as const;

/** A tenth for slack, at least a metre. Common practice, no source, from memory. */
const slackShare = 0.1;
const slackLeastMm = 1000;

/**
 * Length classes of home runs, in the order of runs. The plan states no routes: breakouts are taken to stand at the middle of
 * their zone, on the floor under a wall or at the edge of a ceiling where the loom arrives, as where ways of wiring are
 * compared. A cable goes along that edge to its panel's column (or row), then up to the panel's lower edge, with slack; the
 * way from there to a rack elsewhere comes on top.
 */
export function homeRunLengths(
  surfaces: SurfaceSet,
  zones: readonly Zone[],
  runs: Pick<RunsResults, 'runs' | 'order'>,
  {
    ceilingEntry,
    lengths,
  }: { readonly ceilingEntry: Plan['signal']['ceilingEntry']; readonly lengths: Plan['lengths'] },
): readonly HomeRunLengths[] {
  const placed = new Map(
    surfaces.surfaces.map((table, s) => [table.surfaceId, { table, offset: surfaces.offsets[s]! }]),
  );
  const zoneOf = new Map(zones.map((zone) => [zone.processor, zone]));
  return runs.runs.map((run): HomeRunLengths => {
    const { table, offset } = placed.get(run.surfaceId)!;
    const lengthTo = (zone: Zone, place: number, heightMm: number): CableLength => {
      const local = runs.order[place]! - offset;
      const wayMm =
        table.kind === 'wall' ? alongFoot(table, zone, local) + heightMm : toEdge(table, zone, local, ceilingEntry);
      return takeStock(wayMm + Math.max(wayMm * slackShare, slackLeastMm), lengths);
    };
    const backTo = run.returnProcessor === null ? undefined : zoneOf.get(run.returnProcessor);
    return {
      home: lengthTo(zones[run.zone]!, run.start, run.entryHeightMm),
      back: backTo?.surfaceId === run.surfaceId ? lengthTo(backTo, run.start + run.count - 1, run.exitHeightMm) : null,
    };
  });
}

function alongFoot(table: SurfaceTable, zone: Zone, local: number): number {
  return Math.abs(table.column[local]! - zone.firstColumn - (zone.columns - 1) / 2) * table.types[0]!.widthMm;
}

function alongSide(table: SurfaceTable, zone: Zone, local: number): number {
  return Math.abs(table.row[local]! - zone.firstRow - (zone.rows - 1) / 2) * table.types[0]!.heightMm;
}

/** From the middle of the zone at the edge of the ceiling, along that edge and across to the near side of the panel. */
function toEdge(table: SurfaceTable, zone: Zone, local: number, edge: Plan['signal']['ceilingEntry']): number {
  const { widthMm, heightMm } = table.types[0]!;
  const column = table.column[local]!;
  const row = table.row[local]!;
  switch (edge) {
    case 'bottom':
      return alongFoot(table, zone, local) + (row - 1) * heightMm;
    case 'top':
      return alongFoot(table, zone, local) + (table.rows - row) * heightMm;
    case 'left':
      return alongSide(table, zone, local) + (column - 1) * widthMm;
    case 'right':
      return alongSide(table, zone, local) + (table.columns - column) * widthMm;
  }
}

function takeStock(leastMm: number, system: Plan['lengths']): CableLength {
  const { unitMm, lengths } = stock[system];
  const taken = lengths.find((length) => length * unitMm >= leastMm);
  return { leastMm, stockMm: taken === undefined ? null : taken * unitMm };
}
