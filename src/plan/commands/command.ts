import type { Plan } from '../plan';

/** What a command answers: the next plan, or why it refuses (the plan stays as it was). */
export type Outcome = { readonly plan: Plan } | { readonly refused: string; readonly path?: string };

/** One thing a person, a fix or a lever can do to a plan. `apply` is pure; its result passes the schema or it is refused. */
export interface CommandDefinition<Name extends string, Arguments> {
  readonly name: Name;
  /** Words for the history: 'Undo {label}'. */
  readonly label: (plan: Plan, args: Arguments) => string;
  readonly apply: (plan: Plan, args: Arguments) => Outcome;
}
