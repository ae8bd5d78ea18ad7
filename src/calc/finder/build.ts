import type { Command } from '../../plan/commands';
import type { Check } from '../chapter';

/** What signal and power come to at the least with a build in the plan, before anything is wired; 0: no bound is known. */
export interface LeastFigures {
  readonly processors: number;
  readonly ports: number;
  readonly worstLegA: number;
}

/** What signal and power come to with a build, from a whole evaluation. */
export interface ExactFigures {
  /** Null where nothing can drive the wall, so that it has neither zone nor port. */
  readonly processors: number | null;
  readonly ports: number | null;
  readonly worstLegA: number | null;
  readonly circuits: number;
  /** Everything of the stage, bought new. */
  readonly priceTotal: number;
  /** Stops that the plan would have with it. */
  readonly stops: readonly Check[];
}

/** One wall that the wish could be built as. */
export interface Build {
  /** Unique in a list: panel, columns, joints and rows. */
  readonly key: string;
  readonly panelId: string;
  readonly panelName: string;
  readonly columns: number;
  readonly rows: number;
  readonly panels: number;
  /** Inside diameter of a ring, length of a flat wall. */
  readonly acrossMm: number;
  readonly openingMm: number | null;
  readonly heightMm: number;
  /** Worst distance of a face from the circle of best fit; null for a flat wall. */
  readonly worstMm: number | null;
  readonly mixed: boolean;
  /** Room left in the hall with all walls and their walkways in it, negative where it is too small; null where the hall is not stated. */
  readonly roomMm: number | null;
  readonly areaM2: number;
  readonly pixels: number;
  readonly massKg: number;
  /** Panels of the wall without spares; null where the price is not stated. */
  readonly price: number | null;
  /** No higher than the panel's lock may stack, and than the hall is clear; true where the limit is not stated. */
  readonly withinStack: boolean;
  readonly underHall: boolean;
  /** What must drive in gets in; true where nobody stated what, and where the wall closes round nothing. */
  readonly letsIn: boolean;
  /** How far across, opening and height miss the wish. */
  readonly missMm: number;
  /** Puts it in place of the first wall. */
  readonly command: Command;
}

/** The builds of one panel, best first; or why there is none. */
export interface PanelBuilds {
  readonly panelId: string;
  readonly panelName: string;
  readonly builds: readonly Build[];
  readonly refused: string | null;
}
