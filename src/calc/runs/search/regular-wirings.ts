import type { RunLimits, WiringGrid } from '../wiring-grid';
import { LeastPortsOfWay } from './least-ports-of-way';
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

/**
 * The same for a zone made ready. Ways that cannot do with `portsThere` are left out where another one can and leaves no entry
 * above reach: that one is better whatever the priority.
 */
export function wireRegularly(zone: ZoneToWire, portsThere = Number.POSITIVE_INFINITY): ZoneWiring[] {
  const ways = [...regularWays(zone)];
  const least = new LeastPortsOfWay(zone);
  const mayFit = ways.map((way) => least.of(way) <= portsThere);
  const layout = new WayLayout(zone);
  const wirings: ZoneWiring[][] = ways.map(() => []);
  let laidOut = 0;
  const wire = (fitting: boolean) => {
    for (const [i, way] of ways.entries()) {
      if (mayFit[i] !== fitting || laidOut > PANELS_LAID_OUT) continue;
      wirings[i] = wireInWay(zone, way, layout);
      laidOut += zone.region.size * 4;
    }
  };
  wire(true);
  const found = wirings.flat();
  if (found.some((wiring) => wiring.entriesOutOfReach === 0 && wiring.ports <= portsThere)) return found;
  wire(false);
  return wirings.flat();
}
