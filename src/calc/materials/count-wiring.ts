import type { LinksResults } from '../links/link-result';
import type { PowerResults } from '../power/power-result';
import type { RunsResults } from '../runs/run-result';
import type { NetworkCounts } from './count-network';
import type { WiringCounts } from './wiring-counts';

/**
 * What cables follow from: counts of the wiring, the circuits and the links, with the panels of the stage. A surface without a link
 * that carries its canvases is counted with one cable an output.
 */
export function countWiring(
  runs: RunsResults,
  power: PowerResults,
  links: LinksResults,
  network: NetworkCounts,
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
    video: links.surfaces.reduce((sum, { cables, outputs }) => sum + Math.max(cables, outputs), 0),
    network,
  };
}
