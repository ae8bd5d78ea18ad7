import type { Zone } from '../../calc/zones/zone-result';

/** A zone's name: that of its processor. */
export function zoneName(zone: Pick<Zone, 'processor'>): string {
  return `processor ${zone.processor}`;
}
