import { knownWirings, searchFewestPorts } from './fewest-ports';
import { leastOfZone } from './least-ports';
import { measureWiring } from './measure-wiring';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** Limits tried between what was reached and what was not. */
const TRIES = 6;

/**
 * Wirings whose fullest run is emptier than that of `best`, with no more ports than there are and no more entries above
 * reach, found by searching under ever lower limits: the lowest that is not ruled out first, then half way back.
 */
export function searchMostFree(zone: ZoneToWire, best: ZoneWiring, portsThere: number, steps: number): ZoneWiring[] {
  const { grid, limits, region } = zone;
  const found: ZoneWiring[] = [];
  if (region.size === 0 || zone.tooLarge.length > 0) return found;
  const under = (pixels: number) => makeReady(grid, { ...limits, usablePixels: pixels });
  const isRuledOut = (pixels: number) => leastOfZone(under(pixels), best.entriesOutOfReach) > portsThere;
  let reached = best.fullestPixels;
  let missed = 0;
  for (const pixels of region.pixels) missed = Math.max(missed, pixels - 1);
  // Narrowed by the bound alone, which costs little, until it says no more.
  for (let low = missed, high = reached - 1; low < high; ) {
    const middle = Math.ceil((low + high) / 2);
    if (isRuledOut(middle)) {
      low = middle;
      missed = middle;
    } else high = middle - 1;
  }
  for (let attempt = 0; attempt < TRIES && missed + 1 < reached; attempt++) {
    const pixels = attempt === 0 ? missed + 1 : Math.floor((missed + reached) / 2);
    const tight = under(pixels);
    const aim = { steps: Math.floor(steps / TRIES), enough: portsThere };
    const { wiring } = searchFewestPorts(tight, knownWirings(tight), aim);
    const isGood = wiring.ports <= portsThere && wiring.entriesOutOfReach <= best.entriesOutOfReach;
    if (isGood) {
      found.push(measureWiring(grid, limits, wiring.way, wiring, zone.tooLarge));
      reached = wiring.fullestPixels;
    } else missed = pixels;
  }
  return found;
}
