/** Where runs begin on a list of strands: run i is `cells[start[i] .. start[i + 1] - 1]` of it; `start[0]` is 0. Filled anew for every way. */
export interface RunCuts {
  readonly start: Int32Array;
  /** Pixels of each run, by the way of counting. */
  readonly pixels: Float64Array;
  count: number;
}
