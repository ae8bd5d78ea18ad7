import { type Culprit, culpritKinds } from './culprit';
import { culpritsTouching } from './culprits-touching';
import { darkBy } from './dark-by';
import type { FaultModel } from './fault-model';
import { mostDarkened } from './most-darkened';

/** Parts whose failure darkens just the same panels, and how well these match what is dark. */
export interface Suspects {
  /** In the order in which one looks for them. */
  readonly culprits: readonly Culprit[];
  /** Panels dark both ways / panels dark either way: 1 where they are the same. */
  readonly match: number;
  /** Panels that each of them darkens, and how many of those are dark. */
  readonly darkens: number;
  readonly hits: number;
}

interface Scored {
  readonly culprit: Culprit;
  readonly match: number;
  readonly darkens: number;
  readonly hits: number;
}

/** A longer list of near misses helps nobody on a ladder. */
const groupsMost = 5;
/** Scores that are kept while searching: more than the groups hold, since a group is several parts with one score. */
const keptMost = 80;

const orderOf = new Map(culpritKinds.map((kind, place) => [kind, place]));

/**
 * The likeliest single culprits of these dark panels, best first, at most five groups: by how well what a part darkens matches
 * what is dark, then by the smallest and the one that fails oftenest. Only parts that can darken one of the panels are tried.
 */
export function rankSuspects(model: FaultModel, dark: Iterable<number>): readonly Suspects[] {
  const known = new Set<number>();
  for (const panel of dark) if (panel >= 0 && panel < model.surfaces.total) known.add(panel);
  return known.size === 0 ? [] : group(model, score(model, known));
}

/** Large parts first: a part of a chain darkens no more than the whole chain, so that most cables need no look. */
function score(model: FaultModel, dark: ReadonlySet<number>): readonly Scored[] {
  const touching = culpritsTouching(model, dark);
  const byCircuit = new Map<number, number>();
  const kept: Scored[] = [];
  let least = 0;
  for (const kind of [...culpritKinds].reverse()) {
    for (const culprit of touching.get(kind)!) {
      if (mostDarkened(model, culprit, byCircuit) / dark.size < least) continue;
      const panels = darkBy(model, culprit);
      if (kind === 'circuit') byCircuit.set(culprit.index, panels.length);
      const hits = panels.reduce((count, panel) => (dark.has(panel) ? count + 1 : count), 0);
      const match = hits / (dark.size + panels.length - hits);
      if (hits === 0 || match < least) continue;
      kept.push({ culprit, match, darkens: panels.length, hits });
      if (kept.length >= 2 * keptMost) least = prune(kept);
    }
  }
  return kept.sort(byMatch);
}

function byMatch(one: Scored, other: Scored): number {
  return (
    other.match - one.match ||
    orderOf.get(one.culprit.kind)! - orderOf.get(other.culprit.kind)! ||
    one.culprit.index - other.culprit.index
  );
}

/** Keeps the best, with all that score as the last of them, and gives its score. */
function prune(kept: Scored[]): number {
  const least = [...kept].sort(byMatch)[keptMost - 1]!.match;
  kept.splice(0, kept.length, ...kept.filter(({ match }) => match >= least));
  return least;
}

/** Puts together what darkens the same panels, in the order of the best of each. */
function group(model: FaultModel, scored: readonly Scored[]): readonly Suspects[] {
  const groups = new Map<string, { readonly culprits: Culprit[] } & Omit<Suspects, 'culprits'>>();
  for (const { culprit, match, darkens, hits } of scored) {
    const key = darkBy(model, culprit).join();
    const found = groups.get(key);
    if (found) found.culprits.push(culprit);
    else if (groups.size < groupsMost) groups.set(key, { culprits: [culprit], match, darkens, hits });
  }
  return [...groups.values()];
}
