import type { Quantity } from '../chapter';

/**
 * moved: the name stands for other content (other panels, another place); changed: the same thing with another detail or
 * figure; renamed: the same content under another name.
 */
export type ChangeKind = 'added' | 'removed' | 'moved' | 'renamed' | 'changed';

export type Changed = 'figure' | 'check' | 'panel' | 'port' | 'trunk' | 'processor' | 'node' | 'circuit' | 'item';

/** Words and figures in the order in which they are read; the edge writes the figures out. */
export type Said = readonly (string | Quantity)[];

/** One thing that is not in the new plan what it was in the old one. */
export interface Change {
  readonly kind: ChangeKind;
  readonly what: Changed;
  /** As the new plan calls it; of what was removed, as the old one did. */
  readonly name: string;
  /** What it was, of what was renamed its name; null: nothing, or a figure that was not known. */
  readonly before: Said | null;
  readonly after: Said | null;
}
