import type { PowerResults } from '../power/power-result';
import type { RunsResults } from '../runs/run-result';
import type { ZonesResults } from '../zones/zone-result';
import type { WiringCounts } from './wiring-counts';

/** What cables follow from: counts of the wiring, the circuits and the zones, with the panels of the stage. */
export function countWiring(
  runs: RunsResults,
  power: PowerResults,
  zones: ZonesResults,
  panels: number,
): WiringCounts & { readonly panels: number } {
  return {
    panels,
    runs: runs.runs.length,
    returns: runs.runs.filter(({ returnPort }) => returnPort !== null).length,
    panelsOnRuns: runs.order.length,
    circuits: power.circuits.length,
    panelsOnCircuits: power.order.length,
    breakouts: runs.breakouts,
    zones: zones.zones.length,
  };
}
