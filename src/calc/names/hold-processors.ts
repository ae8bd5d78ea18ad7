import type { SurfaceSet } from '../surfaces/surface-table';
import { zoneOfPanels } from '../zones/zone-of-panels';
import type { ZonesResults } from '../zones/zone-result';
import { grantNumbers, type NumberClaim } from './grant-numbers';
import type { LocatedNames } from './locate-names';
import { readPortName } from './read-port-name';

/** The panel by which a processor is held decides only where its ports are equally divided. */
const portWeight = 2;
const anchorWeight = 1;

/**
 * The zones with the numbers of processors that are held: a zone has that of the processor to which most of the held ports in
 * it belong. Others get numbers that were never held.
 */
export function holdProcessors(
  zones: ZonesResults,
  { processors, ports }: LocatedNames,
  surfaces: SurfaceSet,
): ZonesResults {
  const zoneOf = surfaces.surfaces.map((table) => zoneOfPanels(table, zones.zones));
  const zoneAt = Int32Array.from(zoneOf.flatMap((part) => Array.from(part)));
  const claims: NumberClaim[] = [];
  let highest = 0;
  const claim = (number: number, panel: number, weight: number) => {
    highest = Math.max(highest, number);
    const thing = panel < 0 ? -1 : zoneAt[panel]!;
    if (thing >= 0) claims.push({ thing, number, weight });
  };
  for (const { number, at } of processors) claim(number, at, anchorWeight);
  for (const { name, first } of ports) {
    const named = readPortName(name);
    if (named !== null) claim(named.processor, first, portWeight);
  }
  const numbers = grantNumbers(zones.zones.length, claims, highest);
  return { ...zones, zones: zones.zones.map((zone, i) => ({ ...zone, processor: numbers[i]! })) };
}
