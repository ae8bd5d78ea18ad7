/** Counts of the wiring and the circuits that cables follow from. */
export interface WiringCounts {
  readonly runs: number;
  /** Runs whose last panel goes back to a port. */
  readonly returns: number;
  readonly panelsOnRuns: number;
  readonly circuits: number;
  readonly panelsOnCircuits: number;
  readonly breakouts: number;
  readonly zones: number;
}
