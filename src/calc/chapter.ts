import type { Command } from '../plan/commands';
import type { Unit } from '../units/unit';

/** Chapters of the evaluation, in the order in which they are computed. */
export type ChapterId =
  | 'wish'
  | 'panels'
  | 'walls'
  | 'ceilings'
  | 'picture'
  | 'ports'
  | 'zones'
  | 'runs'
  | 'nodes'
  | 'links'
  | 'power'
  | 'faults'
  | 'heat'
  | 'masses'
  | 'materials';

export type { Unit };

/** offer: something better or not yet stated, never marks a chapter; watch: look at it; stop: cannot stand as planned. */
export type Severity = 'pass' | 'offer' | 'watch' | 'stop';

/** A place that a check concerns, by the full name a crew reads ('A C38 R9', 'port 3B-04', 'leg L2', 'distro 4')
 *  or, for kind `field`, by its path in the plan ('wish.hall.lengthMm'). */
export interface Place {
  readonly kind:
    | 'surface'
    | 'column'
    | 'panel'
    | 'zone'
    | 'processor'
    | 'port'
    | 'breakout'
    | 'trunk'
    | 'jumper'
    | 'node'
    | 'link'
    | 'circuit'
    | 'distro'
    | 'leg'
    | 'item'
    | 'field';
  readonly name: string;
}

/** A repair: a label for its button and the command that applies it. */
export interface Fix {
  readonly label: string;
  readonly command: Command;
  /** Only while it is still to be proved on the whole plan: what is offered where it does not hold; null: nothing. */
  readonly otherwise?: Fix | null;
}

/** A figure inside a sentence. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

/**
 * One check. `measured` is null where the figure cannot be computed, `limit` null where nobody stated one.
 * `sentence` holds `{measured}`, `{limit}` and names of `values`, which the edge replaces by formatted figures.
 */
export interface Check {
  /** chapter.what, and `.name` of the thing where one check is made for each: 'walls.hall-fit.A'. */
  readonly id: string;
  readonly chapter: ChapterId;
  readonly severity: Severity;
  readonly measured: number | null;
  readonly limit: number | null;
  readonly unit: Unit;
  readonly where: readonly Place[];
  readonly sentence: string;
  readonly values?: Readonly<Record<string, Quantity>>;
  readonly fix?: Fix;
}

/** Where a formula or figure comes from. */
export interface Source {
  /** source: a published document; practice: common practice, no source; sheet: typed in from an equipment data sheet; given: the user's. */
  readonly kind: 'source' | 'practice' | 'sheet' | 'given';
  readonly text: string;
  /** True where the number was written down from memory. */
  readonly fromMemory?: boolean;
}

/**
 * One line of working. `expression` is plain arithmetic over the names in `numbers` (+ - * / ^, parentheses, floor, ceil,
 * round, min, max, abs, sqrt, sin, cos, tan in radians, pi), so that a maths library can evaluate the printed line;
 * its value must equal `value` to 1e-9 relative.
 */
export interface Step {
  /** The headline figure this line belongs to. */
  readonly figure: string;
  readonly symbol: string;
  readonly expression: string;
  readonly numbers: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: Unit;
  readonly source: Source;
}

/** What every chapter function returns. */
export interface Chapter<Results> {
  readonly results: Results;
  readonly checks: readonly Check[];
  readonly working: readonly Step[];
}
