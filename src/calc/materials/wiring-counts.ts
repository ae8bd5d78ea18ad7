import type { NetworkCounts } from './count-network';

/** Counts of the wiring and the circuits that cables follow from. */
export interface WiringCounts {
  readonly runs: number;
  /** Runs whose last panel goes back to a port. */
  readonly returns: number;
  readonly panelsOnRuns: number;
  readonly circuits: number;
  readonly panelsOnCircuits: number;
  readonly breakouts: number;
  /** Cables of the links from nodes to processors. */
  readonly video: number;
  readonly network: NetworkCounts;
}
