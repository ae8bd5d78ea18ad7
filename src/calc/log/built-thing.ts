import type { TickedKind } from '../../plan/build-log';

/** One thing of the plan that is ticked off. */
export interface BuiltThing {
  readonly of: TickedKind;
  /** As it stands on paper: 'A C38', '3B-04', 'D4-11'. */
  readonly name: string;
  readonly surfaceId: string;
  /** Zones that drive its panels, by their index, in rising order. */
  readonly zones: readonly number[];
  /** Numbers of its panels: a column from the floor, a port and a circuit along the chain, the first one first. A port that a
   *  run only comes back to has those of the run. */
  readonly panels: readonly number[];
  /** False for a port that a run only comes back to: without it the panels still have their picture. */
  readonly feeds: boolean;
}

/** Everything of a plan that is ticked off: columns from the first of each surface, ports and circuits by their order. */
export type BuiltThings = Readonly<Record<TickedKind, readonly BuiltThing[]>>;
