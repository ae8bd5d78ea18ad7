import type { RunLimits, WiringGrid } from '../wiring-grid';
import { leastChains, mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import { chainsToRuns, listRuns, type Runs, runsToChains } from './chains-to-runs';
import { connectedParts } from './connected-parts';
import { fewestChains } from './fewest-chains';
import { measureWiring } from './measure-wiring';
import { compareWithMirror, mirrorGrid } from './mirror-grid';
import { mirrorWiring } from './mirror-wiring';
import { regionOf } from './region';
import { wireRegularly } from './regular-wirings';
import { stackBands } from './stack-bands';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

export interface FewestPorts {
  readonly wiring: ZoneWiring;
  /** No wiring with at most as many entries above reach has fewer ports: a proved bound. */
  readonly least: number;
}

export interface FewestPortsAim {
  /** Moves tried, at most, in all parts of the zone together. */
  readonly steps: number;
  /** Ports at which the search may stop, where no entry is above reach; 0: go on to the least possible. */
  readonly enough: number;
}

/** Wirings that the search starts from. */
const STARTS = 6;

/**
 * The wiring with fewest entries above reach and then fewest ports that can be found in so many steps; exact for zones no
 * more than twelve panels wide or high where the steps suffice. The same arguments give the same wiring.
 */
export function fewestPorts(grid: WiringGrid, limits: RunLimits, steps: number): ZoneWiring {
  if (compareWithMirror(grid, limits.counting) > 0)
    return mirrorWiring(grid, fewestPorts(mirrorGrid(grid), limits, steps));
  const zone = makeReady(grid, limits);
  return searchFewestPorts(zone, knownWirings(zone), { steps, enough: 0 }).wiring;
}

/** What a search starts from: the regular ways, and the best stack of bands. */
export function knownWirings(zone: ZoneToWire): ZoneWiring[] {
  const bands = stackBands(zone);
  return bands === null ? wireRegularly(zone) : [...wireRegularly(zone), bands];
}

/** The same search from wirings that are there already, at least one. */
export function searchFewestPorts(
  zone: ZoneToWire,
  known: readonly ZoneWiring[],
  { steps, enough }: FewestPortsAim,
): FewestPorts {
  const { grid, limits, region, tooLarge } = zone;
  const starts = [...known]
    .sort((a, b) => a.entriesOutOfReach - b.entriesOutOfReach || a.ports - b.ports)
    .slice(0, STARTS);
  const runs: Runs = Array.from(tooLarge, (place) => [place]);
  let least = tooLarge.length;
  const parts = connectedParts(region);
  for (const places of parts) {
    const part = regionOf(grid, region.limits, places);
    const answer = fewestChains(
      part,
      starts.map((start) => runsToChains(part, start)),
      {
        steps: Math.floor((steps * places.length) / region.size),
        enough: parts.length === 1 ? enough - tooLarge.length : 0,
      },
    );
    least += answer.least;
    for (const run of chainsToRuns(zone.grid, part, answer.chains)) runs.push(run);
  }
  const found = { wiring: measureWiring(grid, limits, { kind: 'free' }, listRuns(runs), tooLarge), least };
  return betterWithLess(zone, found, { steps, enough });
}

/**
 * More headroom must never need fewer ports, yet a search that falls short may find fewer where less is usable: where that is
 * not ruled out, it looks there too. Done for panels of one size whose pixels count; elsewhere only exact answers keep it.
 */
function betterWithLess(zone: ZoneToWire, found: FewestPorts, aim: FewestPortsAim): FewestPorts {
  const { grid, limits, region } = zone;
  const { wiring, least } = found;
  const oneSize = region.pixels.every((pixels) => pixels === region.pixels[0]);
  if (!oneSize || limits.counting === 'rectangle' || region.size === 0) return found;
  const most = mostOnARun(region);
  if (most.panels <= 1 || (wiring.ports <= least && wiring.entriesOutOfReach <= leastHigh(region, most))) return found;
  const less = { ...region.limits, usablePixels: (most.panels - 1) * region.pixels[0]! };
  const lower = regionOf(grid, less, region.places);
  const lowerMost = mostOnARun(lower);
  const highBest = leastHigh(lower, lowerMost);
  if (highBest > wiring.entriesOutOfReach) return found;
  const portsBest = zone.tooLarge.length + leastChains(lower, wiring.entriesOutOfReach, lowerMost);
  if (highBest === wiring.entriesOutOfReach && portsBest >= wiring.ports) return found;
  const lowerZone = makeReady(grid, less);
  const other = searchFewestPorts(lowerZone, knownWirings(lowerZone), aim).wiring;
  if ((other.entriesOutOfReach - wiring.entriesOutOfReach || other.ports - wiring.ports) >= 0) return found;
  return { wiring: measureWiring(grid, limits, other.way, other, zone.tooLarge), least };
}
