/**
 * The rectangle of one zone as the wiring search sees it: places `column * rows + row`, both from 0, row 0 lowest
 * (or, on a ceiling, the edge where the loom arrives as row 0 of a lattice turned so).
 */
export interface WiringGrid {
  readonly columns: number;
  readonly rows: number;
  /** 1 where a panel is. */
  readonly present: Uint8Array;
  /** Left, top, width and height on the canvas; top counts down. A panel's pixels are width x height. */
  readonly pixelLeft: Uint32Array;
  readonly pixelTop: Uint32Array;
  readonly pixelWidth: Uint32Array;
  readonly pixelHeight: Uint32Array;
  /** Height of the panel's lower edge above the floor. */
  readonly entryHeightMm: Float64Array;
  /** From one column to the next and from one row to the next (their means where they differ): for the estimate of cable only. */
  readonly columnPitchMm: number;
  readonly rowPitchMm: number;
}

/** What one run may hold and where it may begin. */
export interface RunLimits {
  readonly usablePixels: number;
  readonly panelsMost: number;
  readonly counting: 'panels' | 'rectangle';
  /** Highest lower edge of an entry panel; Infinity switches reach off. */
  readonly reachMm: number;
  /** A cable leaves the last panel of every run too. Left out: no return. */
  readonly returns?: boolean;
  /** The last panel of a run obeys reach as its first one does. Left out: it does not. */
  readonly lastObeysReach?: boolean;
}
