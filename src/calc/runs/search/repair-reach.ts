import type { WiringGrid } from '../wiring-grid';
import { anneal } from './anneal';
import { mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import { chainsToRuns, listRuns, type Runs, runsToChains } from './chains-to-runs';
import { connectedParts } from './connected-parts';
import { measureWiring } from './measure-wiring';
import { PathCover } from './path-cover';
import { createRandomBits } from './random-bits';
import { type Region, regionOf } from './region';
import type { ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** How far from a run with an entry above reach others are taken in, in runs next to runs. */
const RINGS = 3;
const MOVES_A_CELL = 500;
const MOVES_AT_LEAST = 10_000;
/** Runs more than there are that are tried. */
const MORE_RUNS = [0, 1, 2] as const;
/** Straight runs before all: what is repaired shall look like what is not. */
const TUNING = { bendWeight: 0.45, highWeight: 1.5, temperature: 0.2 } as const;

export interface Repaired {
  readonly wiring: ZoneWiring;
  readonly steps: number;
}

/**
 * Wires anew what stands about runs whose entries are above reach, as at a hole, and leaves the rest of the wiring as it is:
 * a regular way stays regular but for there. Gives the wiring itself where nothing gets better within the steps. `inVain`
 * remembers what came to nothing, for ways that are the same where they break reach.
 */
export function repairReach(
  zone: ZoneToWire,
  wiring: ZoneWiring,
  steps: number,
  inVain: Set<string> = new Set(),
): Repaired {
  let best = wiring;
  let spent = 0;
  for (let ring = 1; ring <= RINGS && spent < steps; ring++) {
    const concerned = runsAround(zone, best, ring);
    const kept: number[][] = [];
    const places: number[] = [];
    for (let run = 0; run < best.ports; run++) {
      const own = best.order.subarray(best.start[run]!, best.start[run + 1]!);
      if (concerned[run] === 1) places.push(...own);
      else kept.push(Array.from(own));
    }
    if (places.length === 0) break;
    const around = regionOf(zone.grid, zone.region.limits, Int32Array.from(places).sort());
    const runs: Runs = kept;
    for (const part of connectedParts(around)) {
      const region = regionOf(zone.grid, zone.region.limits, part);
      const result = rewire(zone.grid, region, best, steps - spent, inVain);
      spent += result.steps;
      runs.push(...result.runs);
    }
    const next = measureWiring(zone.grid, zone.limits, wiring.way, listRuns(runs), zone.tooLarge);
    if (next.entriesOutOfReach < best.entriesOutOfReach) best = next;
    if (kept.length === zone.tooLarge.length) break;
  }
  return { wiring: best, steps: spent };
}

function rewire(
  grid: WiringGrid,
  region: Region,
  wiring: ZoneWiring,
  steps: number,
  inVain: Set<string>,
): { runs: Runs; steps: number } {
  let best = runsToChains(region, wiring);
  let high = new PathCover(region, best).high;
  const least = leastHigh(region, mostOnARun(region));
  const randomBits = createRandomBits(0x51ed270b);
  const where = region.places.join(' ');
  let spent = 0;
  for (const more of MORE_RUNS) {
    const cover = new PathCover(region, best);
    for (let i = 0; i < more; i++) cover.cutWorst();
    if (inVain.has(`${cover.chains} ${high} ${where}`)) continue;
    let moves = Math.min(steps - spent, MOVES_A_CELL * region.size + MOVES_AT_LEAST);
    while (high > least && moves > 0) {
      const aim = { ...TUNING, chains: cover.chains, highMost: high - 1, steps: moves };
      const result = anneal(cover, aim, randomBits);
      spent += result.steps + 1;
      moves -= result.steps + 1;
      if (!result.arrived) {
        inVain.add(`${cover.chains} ${high} ${where}`);
        break;
      }
      best = cover.read();
      high = cover.high;
    }
  }
  return { runs: chainsToRuns(grid, region, best), steps: spent };
}

/** 1 for runs with an end above reach that fit a port, and for those next to them, ring after ring. */
function runsAround(zone: ZoneToWire, wiring: ZoneWiring, rings: number): Uint8Array {
  const { region, cellAt } = zone;
  const runOf = new Int32Array(region.size).fill(-1);
  const taken = new Uint8Array(wiring.ports);
  for (let run = 0; run < wiring.ports; run++) {
    const first = cellAt[wiring.order[wiring.start[run]!]!]!;
    const last = cellAt[wiring.order[wiring.start[run + 1]! - 1]!]!;
    if (first < 0) continue;
    for (let at = wiring.start[run]!; at < wiring.start[run + 1]!; at++) runOf[cellAt[wiring.order[at]!]!] = run;
    const isHigh =
      region.outOfReach[first] === 1 || (zone.limits.lastObeysReach === true && region.outOfReach[last] === 1);
    if (isHigh) taken[run] = 1;
  }
  for (let ring = 0; ring < rings; ring++) {
    const before = taken.slice();
    for (let cell = 0; cell < region.size; cell++) {
      if (before[runOf[cell]!] === 0) continue;
      for (let side = 0; side < 4; side++) {
        const next = region.neighbours[cell * 4 + side]!;
        if (next >= 0) taken[runOf[next]!] = 1;
      }
    }
  }
  return taken;
}
