import type { RunLimits, WiringGrid } from '../wiring-grid';

/** The runs of one zone as lists of places, entry first, while hand changes are laid over them. */
export interface ZoneRunsDraft {
  readonly grid: WiringGrid;
  readonly limits: RunLimits;
  readonly runs: readonly (readonly number[])[];
}

/** The runs after a change, or why the change rests. */
export type Changed = { readonly runs: readonly (readonly number[])[] } | { readonly reason: string };
