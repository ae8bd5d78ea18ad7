import type { WiringGrid } from '../wiring-grid';
import type { Chains } from './chains';
import { homeLengths } from './home-lengths';
import type { Region } from './region';
import type { ZoneWiring } from './zone-wiring';

/** Places of each run, entry first. */
export type Runs = number[][];

/** Chains of a region as runs: the entry is the end in reach, or else the one with the shorter cable home. */
export function chainsToRuns(grid: WiringGrid, region: Region, { order, start }: Chains): Runs {
  const runs: Runs = [];
  const home = homeLengths(grid, region);
  for (let chain = 0; chain + 1 < start.length; chain++) {
    const cells = Array.from(order.subarray(start[chain]!, start[chain + 1]!));
    const first = cells[0]!;
    const last = cells[cells.length - 1]!;
    const turn =
      region.outOfReach[first]! - region.outOfReach[last]! ||
      home[first]! - home[last]! ||
      region.row[first]! - region.row[last]! ||
      region.column[first]! - region.column[last]!;
    if (turn > 0) cells.reverse();
    runs.push(cells.map((cell) => region.places[cell]!));
  }
  return runs;
}

/** The runs of a wiring that lie in a region, which must not cut through any, as chains over its cells. */
export function runsToChains(region: Region, wiring: ZoneWiring): Chains {
  const cellAt = new Map<number, number>();
  region.places.forEach((place, cell) => {
    cellAt.set(place, cell);
  });
  const order: number[] = [];
  const start = [0];
  for (let run = 0; run < wiring.ports; run++) {
    if (!cellAt.has(wiring.order[wiring.start[run]!]!)) continue;
    for (let at = wiring.start[run]!; at < wiring.start[run + 1]!; at++) order.push(cellAt.get(wiring.order[at]!)!);
    start.push(order.length);
  }
  return { order: Int32Array.from(order), start: Int32Array.from(start) };
}

/** Runs one after the other in one list of places. */
export function listRuns(runs: Runs): { readonly order: Int32Array; readonly start: Int32Array } {
  const start = new Int32Array(runs.length + 1);
  runs.forEach((run, i) => {
    start[i + 1] = start[i]! + run.length;
  });
  return { order: Int32Array.from(runs.flat()), start };
}
