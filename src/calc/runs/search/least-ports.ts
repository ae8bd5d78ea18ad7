import type { RunLimits, WiringGrid } from '../wiring-grid';
import { leastChains } from './bounds/least-chains';
import { connectedParts } from './connected-parts';
import { regionOf } from './region';
import { makeReady, type ZoneToWire } from './zone-to-wire';

/**
 * A proved lower bound of the ports a zone needs: no wiring whose runs fit, and which leaves at most `entriesOutOfReach`
 * entries above reach, has fewer. Left out, reach is not taken into account.
 */
export function leastPorts(grid: WiringGrid, limits: RunLimits, entriesOutOfReach = Number.POSITIVE_INFINITY): number {
  return leastOfZone(makeReady(grid, limits), entriesOutOfReach);
}

export function leastOfZone(zone: ZoneToWire, entriesOutOfReach: number): number {
  const { grid, region, tooLarge } = zone;
  const parts = connectedParts(region);
  if (parts.length === 1) return tooLarge.length + leastChains(region, entriesOutOfReach);
  let least = tooLarge.length;
  for (const places of parts) least += leastChains(regionOf(grid, region.limits, places), entriesOutOfReach);
  return least;
}
