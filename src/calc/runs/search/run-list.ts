/** Places, run after run, each from its entry on: run i is `order[start[i] .. start[i + 1] - 1]`. Lists may be longer than is used. */
export interface RunList {
  readonly order: Int32Array;
  readonly start: Int32Array;
  /** Pixels of each run that count against its port, by the way of counting. */
  readonly pixels: Float64Array;
  ports: number;
}
