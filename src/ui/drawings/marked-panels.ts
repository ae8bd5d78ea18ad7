/** Panels that a drawing marks, and what the mark means. */
export interface MarkedPanels {
  /** By panel through all surfaces, 1 where it is marked. */
  readonly panels: ArrayLike<number>;
  readonly words: string;
}
