import type { ZoneWiring } from './search/zone-wiring';

/** The best of the wirings that one way allows (from the left, from the right, cut full or even); null where there is none. */
export function bestOfWay(wirings: readonly ZoneWiring[], portsThere: number): ZoneWiring | null {
  return wirings.reduce<ZoneWiring | null>(
    (best, next) => (best === null || comesBefore(next, best, portsThere) ? next : best),
    null,
  );
}

/** What fits comes first (ports there, entries in reach), then fewer ports, fewer figures, the emptier fullest port, less cable. */
function comesBefore(a: ZoneWiring, b: ZoneWiring, portsThere: number): boolean {
  const short = ({ ports }: ZoneWiring) => Math.max(0, ports - portsThere);
  const order =
    short(a) - short(b) ||
    a.entriesOutOfReach - b.entriesOutOfReach ||
    a.ports - b.ports ||
    a.figures - b.figures ||
    a.fullestPixels - b.fullestPixels ||
    a.cableMm - b.cableMm;
  return order < 0;
}
