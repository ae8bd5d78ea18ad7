/** Where runs begin on a list of strands: run i is `cells[start[i] .. start[i + 1] - 1]` of it; `start[0]` is 0. Filled anew for every way. */
export interface RunCuts {
  readonly start: Int32Array;
  count: number;
}
