import type { CulpritKind } from '../../calc/faults/culprit';

/** Parts of the wiring that are picked by what they are; a port with a run, a processor with a zone and a circuit have kinds of their own. */
export type PartKind = Exclude<CulpritKind, 'panel' | 'circuit'>;

/** What is picked, shared by all views. `name` is what the crew reads and what finds it again after a change. */
export type Selection =
  | { readonly kind: 'panel'; readonly index: number; readonly name: string }
  | { readonly kind: 'zone'; readonly index: number; readonly name: string }
  | { readonly kind: 'run'; readonly index: number; readonly name: string }
  | { readonly kind: 'circuit'; readonly index: number; readonly name: string }
  | { readonly kind: 'column'; readonly surfaceId: string; readonly column: number; readonly name: string }
  | { readonly kind: 'part'; readonly part: PartKind; readonly index: number; readonly name: string };

export function isSameSelection(one: Selection | null, other: Selection | null): boolean {
  return one?.kind === other?.kind && one?.name === other?.name;
}
