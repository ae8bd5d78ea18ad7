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
  /** Port that its last panel goes back to; null without a return. */
  readonly returnPort: string | null;
  /** Processor of that port, which may be another one; null without a return. */
  readonly returnProcessor: number | null;
  /** Lower edge of its last panel; with a return its cable drops from there. */
  readonly exitHeightMm: number;
}

/** One way of wiring a zone or a surface, for the table of ways and for comparing them. */
export interface WayFigures {
  readonly surfaceId: string;
  readonly way: WayOfWiring;
  /** Returns counted in. */
  readonly ports: number;
  /** Processors with fewer ports than their zone needs. */
  readonly processorsShort: number;
  /** Panels on the shortest and on the longest run. */
  readonly fewest: number;
  readonly most: number;
  /** Pixels of the fullest port / its capacity, before the free share is taken. */
  readonly fullestShare: number;
  readonly highestEntryMm: number;
  readonly entriesOutOfReach: number;
  /** Distinct figures of run in all its zones together. */
  readonly figures: number;
  readonly cableMm: number;
  /** The way by which most panels of the surface are wired. */
  readonly chosen: boolean;
}

export interface SurfaceRuns {
  readonly surfaceId: string;
  /** Returns counted in, as in every number of ports. */
  readonly ports: number;
  /** Least possible number of ports, a proved bound. */
  readonly portsLeast: number;
  readonly ways: readonly WayFigures[];
}

/** Wiring of one zone. */
export interface ZoneRuns {
  readonly surfaceId: string;
  readonly processor: number;
  readonly way: WayOfWiring;
  /** True where a hand change made it what it is. */
  readonly byHand: boolean;
  /** Ways that the search knows for it, each once: those it may be given by hand. */
  readonly ways: readonly WayOfWiring[];
  readonly runs: number;
  /** Ports that its runs take, those they return to among them, on whatever processor these are. */
  readonly ports: number;
  readonly portsLeast: number;
  /** Breakouts with a run or a return on them; 0 on a processor with direct ports. */
  readonly breakouts: number;
  readonly entriesOutOfReach: number;
}

/** One run of a wiring that exists already, as far as its rows make sense: panels by their numbers, in order of place. */
export interface ExistingRun {
  readonly port: string;
  readonly panels: readonly number[];
  /** Surface of its first panel. */
  readonly surfaceId: string;
  /** Pixels that count against the port, by the way of counting of that surface's processor. */
  readonly pixels: number;
  /** pixels / capacity of the port, and / what is usable of it; null without a processor. */
  readonly share: number | null;
  readonly usableShare: number | null;
  readonly entryHeightMm: number;
  readonly inReach: boolean;
}

/** A wiring that exists already, traced on the surfaces. Rows and ports that make no sense are named, nothing else is lost. */
export interface ExistingFigures {
  readonly source: string;
  readonly runs: readonly ExistingRun[];
  /** Ports that have a row, made sense of or not. */
  readonly ports: number;
  readonly panelsPerPortMin: number | null;
  readonly panelsPerPortMax: number | null;
  readonly fullestShare: number | null;
  readonly entriesOutOfReach: number;
  /** Names of panels that no surface has. */
  readonly unknownPanels: readonly string[];
  /** Panels that stand on more than one row. */
  readonly twicePanels: readonly number[];
  /** Panels of the surfaces that stand on no row. */
  readonly missingPanels: readonly number[];
  /** Ports whose places do not count 1, 2, 3, .. */
  readonly gapPorts: readonly string[];
  /** Panels that do not touch the one before them on their run. */
  readonly apartPanels: readonly number[];
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
  /** In the order of the zones' list. */
  readonly zones: readonly ZoneRuns[];
  readonly portsUsed: number;
  readonly portsLeast: number;
  readonly panelsPerPortMin: number | null;
  readonly panelsPerPortMax: number | null;
  readonly fullestPortShare: number | null;
  readonly breakouts: number;
  /** Hand changes that do not apply now, with the reason; they stay in the file. */
  readonly resting: readonly { readonly id: string; readonly reason: string }[];
  /** The wiring that exists already, beside the runs above; null where the plan has none. */
  readonly existing: ExistingFigures | null;
}
