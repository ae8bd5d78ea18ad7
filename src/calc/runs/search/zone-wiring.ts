import type { WayOfWiring } from '../../../plan/hand-change';

/** What the runs of a zone measure. */
export interface WiringMeasures {
  readonly ports: number;
  /** Panels on the shortest and on the longest run; 0 without runs. */
  readonly fewestPanels: number;
  readonly mostPanels: number;
  /** Pixels of the fullest run (0 without runs), and these over the usable pixels: above 1 only with `tooLarge`, null where nothing is usable. */
  readonly fullestPixels: number;
  readonly fullestShare: number | null;
  /** Entries above reach; with returns the last panels above reach as well (a run of one panel counts once). */
  readonly entriesOutOfReach: number;
  /** Lower edge of the highest entry above the floor; null without runs. */
  readonly highestEntryMm: number | null;
  /** Distinct figures of run: the same steps from the entry on, wherever they begin; a mirrored run is another figure. */
  readonly figures: number;
  /** Their codes (see `FigureWalk`), in ascending order: zones that have one in common share that figure. */
  readonly figureCodes: readonly number[];
  /** Estimate that serves to compare ways: see `CableEstimate`. */
  readonly cableMm: number;
}

/** The runs of a zone. Places are `column * rows + row` of the zone's grid. */
export interface WiringRuns {
  /** Places, run after run, each from its entry on; runs in the order of their entries, by column, then row. */
  readonly order: Int32Array;
  /** Run i is `order[start[i] .. start[i + 1] - 1]`; one longer than there are runs. */
  readonly start: Int32Array;
  /** Pixels of each run that count against its port, by the way of counting. */
  readonly pixels: Float64Array;
}

/** One way of wiring a zone: its runs and what they measure. */
export interface ZoneWiring extends WiringMeasures, WiringRuns {
  readonly way: WayOfWiring;
  /** Places whose panel alone is more than a port takes: each has a run of its own, over capacity. */
  readonly tooLarge: Int32Array;
}
