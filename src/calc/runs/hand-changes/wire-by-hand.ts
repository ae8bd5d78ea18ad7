import type { WayOfWiring } from '../../../plan/hand-change';
import { bestOfWay } from '../best-of-way';
import { wireInWay } from '../search/wire-in-way';
import { makeReady } from '../search/zone-to-wire';
import type { ZoneWiring } from '../search/zone-wiring';
import { wayKey } from '../way-key';
import type { WiredZone } from '../wire-zones';

/** A zone wired in the way asked for, or why that way has no meaning in it now. */
export function wireByHand(zone: WiredZone, way: WayOfWiring): ZoneWiring | { readonly reason: string } {
  if (way.kind === 'split' && way.aboveRow >= zone.grid.rows) {
    return { reason: 'its zone has no row above the one at which it splits' };
  }
  const there = zone.ports.runsAProcessor;
  const known = zone.answer.ways.filter((wiring) => wayKey(wiring.way) === wayKey(way));
  const found =
    known.length > 0 || way.kind === 'free'
      ? bestOfWay(known, there)
      : bestOfWay(wireInWay(makeReady(zone.grid, zone.limits), way), there);
  return found ?? { reason: 'the search finds no irregular wiring that betters the regular ones' };
}
