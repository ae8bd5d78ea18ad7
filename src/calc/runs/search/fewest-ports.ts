import type { RunLimits, WiringGrid } from '../wiring-grid';
import type { Chains } from './chains';
import { connectedParts } from './connected-parts';
import { endsOutOfReach } from './ends-out-of-reach';
import { fewestChains } from './fewest-chains';
import { measureWiring } from './measure-wiring';
import { type Region, regionOf } from './region';
import { regularWirings, wireRegularly } from './regular-wirings';
import { stackBands } from './stack-bands';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

export interface FewestPorts {
  readonly wiring: ZoneWiring;
  /** No wiring with as few entries above reach has fewer ports. */
  readonly least: number;
}

export interface FewestPortsAim {
  readonly steps: number;
  /** Ports at which the search may stop, where no entry is above reach; 0: search on. */
  readonly enough: number;
}

/** Regular wirings that a search starts from. */
const STARTS = 6;

export function searchFewestPorts(
  zone: ZoneToWire,
  regular: readonly ZoneWiring[],
  { steps, enough }: FewestPortsAim,
): FewestPorts {
  const { grid, limits, region, tooLarge } = zone;
  const bands = stackBands(zone);
  const starts = [...regular, ...(bands === null ? [] : [bands])]
    .sort((a, b) => a.entriesOutOfReach - b.entriesOutOfReach || a.ports - b.ports)
    .slice(0, STARTS);
  const runs: number[][] = Array.from(tooLarge, (place) => [place]);
  let least = tooLarge.length;
  const parts = connectedParts(region);
  parts.forEach((places) => {
    const part = regionOf(grid, limits, places);
    const share = Math.floor((steps * places.length) / region.size);
    const answer = fewestChains(part, startsWithin(zone, part, starts), {
      steps: share,
      enough: parts.length === 1 ? enough - runs.length : 0,
    });
    least += answer.least;
    for (const run of runsOf(part, answer.chains)) runs.push(run);
  });
  const start = [0];
  for (const run of runs) start.push(start.at(-1)! + run.length);
  const listed = { order: Int32Array.from(runs.flat()), start: Int32Array.from(start) };
  return { wiring: measureWiring(grid, limits, { kind: 'free' }, listed, tooLarge), least };
}

function startsWithin(zone: ZoneToWire, part: Region, wirings: readonly ZoneWiring[]): Chains[] {
  const cellAt = new Int32Array(zone.grid.present.length).fill(-1);
  part.places.forEach((place, cell) => {
    cellAt[place] = cell;
  });
  return wirings.map((wiring) => {
    const order: number[] = [];
    const start = [0];
    for (let run = 0; run < wiring.ports; run++) {
      const from = wiring.start[run]!;
      if (cellAt[wiring.order[from]!]! < 0) continue;
      for (let at = from; at < wiring.start[run + 1]!; at++) order.push(cellAt[wiring.order[at]!]!);
      start.push(order.length);
    }
    return { order: Int32Array.from(order), start: Int32Array.from(start) };
  });
}

function runsOf(part: Region, chains: Chains): number[][] {
  const runs: number[][] = [];
  for (let i = 0; i + 1 < chains.start.length; i++) {
    const run = Array.from(chains.order.subarray(chains.start[i]!, chains.start[i + 1]!));
    const first = run[0]!;
    const last = run[run.length - 1]!;
    const turned =
      part.outOfReach[first]! > part.outOfReach[last]! ||
      (part.outOfReach[first] === part.outOfReach[last] && part.row[last]! < part.row[first]!);
    if (turned) run.reverse();
    runs.push(run.map((cell) => part.places[cell]!));
  }
  return runs;
}

export function fewestPorts(grid: WiringGrid, limits: RunLimits, steps: number): ZoneWiring {
  const zone = makeReady(grid, limits);
  return searchFewestPorts(zone, wireRegularly(zone), { steps, enough: 0 }).wiring;
}
void regularWirings;
void endsOutOfReach;
