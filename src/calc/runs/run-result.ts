import type { WayOfWiring } from '../../plan/hand-change';

/** One run: the ordered panels on one port, entry first. */
export interface Run {
  readonly surfaceId: string;
  /** Index into the zones' list. */
  readonly zone: number;
  /** Port tag: processor number, breakout letter, port number ('3B-04'), or '3-04' on a processor with direct ports. */
  readonly port: string;
  /** Its panels are `order[start .. start + count - 1]`. */
  readonly start: number;
  readonly count: number;
  /** Pixels that count against the port, by the processor's way of counting. */
  readonly pixels: number;
  /** pixels / capacity of the port, before the free share is taken. */
  readonly share: number;
  readonly entryHeightMm: number;
  readonly inReach: boolean;
}

/** One way of wiring a zone or a surface, for the table of ways and for comparing them. */
export interface WayFigures {
  readonly surfaceId: string;
  readonly way: WayOfWiring;
  readonly ports: number;
  readonly processorsShort: number;
  readonly fewest: number;
  readonly most: number;
  readonly fullestShare: number;
  readonly highestEntryMm: number;
  readonly entriesOutOfReach: number;
  /** Distinct figures of run. */
  readonly figures: number;
  readonly cableMm: number;
  readonly chosen: boolean;
}

export interface SurfaceRuns {
  readonly surfaceId: string;
  readonly ports: number;
  /** Least possible number of ports, a proved bound. */
  readonly portsLeast: number;
  readonly ways: readonly WayFigures[];
}

export interface RunsResults {
  readonly runs: readonly Run[];
  /** Panel numbers (through all surfaces), run after run. */
  readonly order: Uint32Array;
  /** Index of the run each panel is on; -1 where it is on none. */
  readonly runOf: Int32Array;
  /** Place on its run, from 1; 0 where it is on none. */
  readonly placeOf: Uint16Array;
  readonly surfaces: readonly SurfaceRuns[];
  readonly portsUsed: number;
  readonly portsLeast: number;
  readonly panelsPerPortMin: number | null;
  readonly panelsPerPortMax: number | null;
  readonly fullestPortShare: number | null;
  readonly breakouts: number;
  /** Hand changes that do not apply now, with the reason; they stay in the file. */
  readonly resting: readonly { readonly id: string; readonly reason: string }[];
}
