/** Places, run after run, each from its entry on: run i is `order[start[i] .. start[i + 1] - 1]`. Both may be longer than is used. */
export interface RunList {
  readonly order: Int32Array;
  readonly start: Int32Array;
  ports: number;
}
