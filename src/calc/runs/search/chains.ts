/** Runs over the cells of a region, each from one end to the other; which end is the entry is not said here. */
export interface Chains {
  /** Cells, chain after chain. */
  readonly order: Int32Array;
  /** Chain i is `order[start[i] .. start[i + 1] - 1]`; one longer than there are chains. */
  readonly start: Int32Array;
}
