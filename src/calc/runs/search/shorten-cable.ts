import { ChainChange } from './chain-change';
import type { Chains } from './chains';
import { chainsToRuns, listRuns, type Runs, runsToChains } from './chains-to-runs';
import { connectedParts } from './connected-parts';
import { homeLengths } from './home-lengths';
import { measureWiring } from './measure-wiring';
import { PathCover } from './path-cover';
import { createRandomBits } from './random-bits';
import { type Region, regionOf } from './region';
import type { ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** Temperatures, in the cable of one jumper. */
const WARM = 1.5;
const COLD = 0.05;

/**
 * Moves entries towards the foot of the zone's middle, by `CableEstimate`, without overloading a run, raising an end above
 * reach or changing how many runs there are; cools down over `steps` moves. Gives a free wiring, no better than before where
 * nothing could be gained.
 */
export function shortenCable(zone: ZoneToWire, wiring: ZoneWiring, steps: number): ZoneWiring {
  const runs: Runs = Array.from(zone.tooLarge, (place) => [place]);
  for (const places of connectedParts(zone.region)) {
    const part = regionOf(zone.grid, zone.region.limits, places);
    const share = Math.floor((steps * part.size) / zone.region.size);
    const chains = shortenPart(zone, part, runsToChains(part, wiring), share);
    runs.push(...chainsToRuns(zone.grid, part, chains));
  }
  return measureWiring(zone.grid, zone.limits, { kind: 'free' }, listRuns(runs), zone.tooLarge);
}

function shortenPart(zone: ZoneToWire, part: Region, start: Chains, steps: number): Chains {
  const home = homeLengths(zone.grid, part);
  const jumper = (zone.grid.columnPitchMm + zone.grid.rowPitchMm) / 2;
  const both = part.limits.returns === true;
  const homeOf = (a: number, b: number) => {
    if (a < 0) return 0;
    if (both) return home[a]! + home[b]!;
    const out = part.outOfReach[a]! - part.outOfReach[b]!;
    return out > 0 ? home[b]! : out < 0 ? home[a]! : Math.min(home[a]!, home[b]!);
  };
  const cover = new PathCover(part, start);
  const move = new ChainChange(cover);
  const randomBits = createRandomBits(0x2545f491);
  const after = new Int32Array(4);
  let best = start;
  let cable = 0;
  let bestCable = 0;
  for (let step = 0; step < steps; step++) {
    const bits = randomBits();
    const chain = (bits >>> 6) % cover.chains;
    const from = (bits & 1) === 0 ? cover.endA[chain]! : cover.endB[chain]!;
    const to = part.neighbours[from * 4 + ((bits >>> 1) & 3)]!;
    if (to < 0 || !move.propose(from, to, (bits & 8) !== 0, false)) continue;
    if (move.excess > 0 || move.high > 0) continue;
    move.endsAfter(after);
    const other = cover.chainOf[to]!;
    let change =
      homeOf(after[0]!, after[1]!) + homeOf(after[2]!, after[3]!) - homeOf(cover.endA[chain]!, cover.endB[chain]!);
    if (other !== chain) change -= homeOf(cover.endA[other]!, cover.endB[other]!);
    const temperature = WARM * (COLD / WARM) ** (step / steps);
    if (change > 0 && randomBits() >= 4294967296 * Math.exp(-change / (temperature * jumper))) continue;
    cable += change;
    move.commit();
    if (cable < bestCable) {
      bestCable = cable;
      best = cover.read();
    }
  }
  return best;
}
