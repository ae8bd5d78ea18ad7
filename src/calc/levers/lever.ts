import type { Command } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import type { Check, Quantity } from '../chapter';
import type { Evaluation } from '../evaluation';

/** What a lever is to mend: the signal fits with what there is, or the panels there are suffice. */
export type Topic = 'signal' | 'panels';

export type LeverId =
  | 'rate'
  | 'depth'
  | 'pictures'
  | 'free-share'
  | 'wiring'
  | 'reach'
  | 'panels-most'
  | 'zone-width'
  | 'processors'
  | 'breakouts'
  | 'nodes'
  | 'signal-gear'
  | 'other-processor'
  | 'columns'
  | 'rows'
  | 'panels';

/** One size of a change, with the command that makes it. */
export interface LeverStep {
  readonly from: Quantity;
  readonly to: Quantity;
  /** A name where the change is a choice and not a size ('Fewest ports'). */
  readonly choice?: string;
  readonly command: Command;
  /** What this step buys new, in the plan's currency; null: a price is not stated; 0 where it buys nothing by itself. */
  readonly buys: number | null;
}

/** A lever: one kind of change, alone. Its steps come least change first. */
export interface LeverDefinition {
  readonly id: LeverId;
  readonly name: string;
  readonly topics: readonly Topic[];
  readonly steps: (plan: Plan, evaluation: Evaluation) => readonly LeverStep[];
}

/** The least step of a lever that makes the plan fit. */
export interface LeverFound {
  readonly id: LeverId;
  readonly name: string;
  readonly step: LeverStep;
  /** Change of what is to be bought, with what the step itself buys; null where a price is not stated. */
  readonly cost: number | null;
  /** Panels the stage loses (fewer columns or rows). */
  readonly panelsLost: number;
}

/** A lever that does not make the plan fit alone, and the stop that remains after its greatest step. */
export interface LeverShort {
  readonly id: LeverId;
  readonly name: string;
  readonly remains: Check | null;
}

export interface LeverAnswer {
  readonly topic: Topic;
  /** The stops that have to go. Empty: it fits as it is. */
  readonly stops: readonly Check[];
  readonly found: readonly LeverFound[];
  readonly short: readonly LeverShort[];
}
