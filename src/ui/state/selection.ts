/** What is picked, shared by all views. `name` is what the crew reads and what finds it again after a change. */
export type Selection =
  | { readonly kind: 'panel'; readonly index: number; readonly name: string }
  | { readonly kind: 'zone'; readonly index: number; readonly name: string }
  | { readonly kind: 'run'; readonly index: number; readonly name: string }
  | { readonly kind: 'circuit'; readonly index: number; readonly name: string }
  | { readonly kind: 'column'; readonly surfaceId: string; readonly column: number; readonly name: string };

export function isSameSelection(one: Selection | null, other: Selection | null): boolean {
  return one?.kind === other?.kind && one?.name === other?.name;
}
