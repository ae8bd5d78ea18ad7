/** Strands one after the other: cells of a region, each next to the one before on its strand. Filled anew for every way. */
export interface StrandList {
  readonly cells: Int32Array;
  /** Strand i is `cells[start[i] .. start[i + 1] - 1]`; `start[0]` is 0. */
  readonly start: Int32Array;
  count: number;
}
