import type { RunLimits, WiringGrid } from '../wiring-grid';
import { regularWays } from './regular-ways';
import { WayLayout } from './way-layout';
import { wireInWay } from './wire-in-way';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** Panels laid out in all before the family is cut short, so that a wall of many thousand panels takes a blink. */
const PANELS_LAID_OUT = 2_000_000;

/** Every regular way of wiring a zone, measured; a way that comes out differently from the left or by another cut comes more than once. */
export function regularWirings(grid: WiringGrid, limits: RunLimits): ZoneWiring[] {
  return wireRegularly(makeReady(grid, limits));
}

export function wireRegularly(zone: ZoneToWire): ZoneWiring[] {
  const wirings: ZoneWiring[] = [];
  const layout = new WayLayout(zone);
  let laidOut = 0;
  for (const way of regularWays(zone)) {
    if (laidOut > PANELS_LAID_OUT) break;
    for (const wiring of wireInWay(zone, way, layout)) wirings.push(wiring);
    laidOut += zone.region.size * 4;
  }
  return wirings;
}
