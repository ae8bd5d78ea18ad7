import type { LocatedChain } from './locate-names';

/** What became of names that are held. */
export interface HeldStates {
  /** In force where they were given. */
  readonly kept: readonly string[];
  /** Their panels are there under another name, as `now` says. */
  readonly renamed: readonly { readonly name: string; readonly now: string }[];
  /** In force on other panels, because there were no more ports or circuits. */
  readonly reused: readonly string[];
  /** In force nowhere: what they stood for goes on under the name of a neighbour that is held too. */
  readonly joined: readonly string[];
  /** In force nowhere: what they stood for is not there. */
  readonly resting: readonly string[];
}

/** Sorts held names by what became of them. `nameAt` is the name that a panel's chain has now, null where it is on none. */
export function heldStates(
  held: readonly LocatedChain[],
  nameAt: (panel: number) => string | null,
  inForce: ReadonlySet<string>,
): HeldStates {
  const nowOf = ({ first, last }: LocatedChain) => [first, last].map((panel) => (panel < 0 ? null : nameAt(panel)));
  const kept = held.filter((chain) => nowOf(chain).includes(chain.name)).map(({ name }) => name);
  const isKept = new Set(kept);
  const renamed: { readonly name: string; readonly now: string }[] = [];
  const reused: string[] = [];
  const joined: string[] = [];
  const resting: string[] = [];
  for (const chain of held) {
    const { name } = chain;
    if (isKept.has(name)) continue;
    const [first, last] = nowOf(chain);
    const now = first ?? last ?? null;
    if (now !== null && !isKept.has(now)) renamed.push({ name, now });
    if (inForce.has(name)) reused.push(name);
    else if (now === null) resting.push(name);
    else if (isKept.has(now)) joined.push(name);
  }
  return { kept, renamed, reused, joined, resting };
}
