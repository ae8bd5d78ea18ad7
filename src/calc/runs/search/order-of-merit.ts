import type { Priority } from '../../../plan/signal';
import type { ZoneWiring } from './zone-wiring';

/** What hardware there is for a zone. */
export interface PortsThere {
  /** Ports of the zone's processor. */
  readonly portsThere: number;
  /** Ports of one breakout; the same as `portsThere`, or left out, where there are none to save. */
  readonly portsABreakout?: number;
}

/**
 * Compares two wirings of a zone: below 0 where the first is the better one. (1) It fits: fewest entries above reach, then
 * fewest ports too many. Then what the user puts first. (2) Least hardware: breakouts. (3) It repeats: fewest figures of run.
 * (4) Even load: the ports that are there are used, so that the fullest keeps most free. (5) Short cable. At last fewer ports.
 */
export function compareMerit(one: ZoneWiring, other: ZoneWiring, priority: Priority, there: PortsThere): number {
  return (
    compareRank(one, other, priority, there) ||
    one.figures - other.figures ||
    one.fullestPixels - other.fullestPixels ||
    one.cableMm - other.cableMm ||
    one.ports - other.ports
  );
}

/** The same as far as hardware: 0 between wirings of which regularity decides. */
export function compareRank(one: ZoneWiring, other: ZoneWiring, priority: Priority, there: PortsThere): number {
  return (
    compareFit(one, other, there) ||
    first(one, priority) - first(other, priority) ||
    breakoutsOf(one, there) - breakoutsOf(other, there)
  );
}

/** Below 0 where the first breaks less: entries above reach, then ports that are not there. */
export function compareFit(one: ZoneWiring, other: ZoneWiring, there: PortsThere): number {
  return one.entriesOutOfReach - other.entriesOutOfReach || portsTooMany(one, there) - portsTooMany(other, there);
}

export function portsTooMany({ ports }: ZoneWiring, { portsThere }: PortsThere): number {
  return Math.max(0, ports - portsThere);
}

export function breakoutsOf({ ports }: { readonly ports: number }, there: PortsThere): number {
  const { portsABreakout = there.portsThere } = there;
  return portsABreakout > 0 ? Math.ceil(ports / portsABreakout) : 0;
}

function first(wiring: ZoneWiring, priority: Priority): number {
  switch (priority) {
    case 'repeats':
      return 0;
    case 'fewest-ports':
      return wiring.ports;
    case 'most-free':
      return wiring.fullestPixels;
    case 'shortest-cable':
      return wiring.cableMm;
  }
}
