import type { Check, Severity } from '../../calc/chapter';

const rank: Readonly<Record<Severity, number>> = { pass: 0, offer: 0, watch: 1, stop: 2 };

/** What a change did to the checks, worst first: the check that got worse most, or the worst that was cleared. */
export type WorstChange =
  | { readonly kind: 'worse'; readonly check: Check; readonly more: number }
  | { readonly kind: 'cleared'; readonly check: Check; readonly more: number };

/** The change most worth saying aloud between two evaluations; null where no check turned. */
export function findWorstChange(before: readonly Check[], after: readonly Check[]): WorstChange | null {
  if (before === after) return null;
  const earlier = new Map(before.map((check) => [check.id, check]));
  const later = new Map(after.map((check) => [check.id, check]));
  const rankBefore = (id: string) => rank[earlier.get(id)?.severity ?? 'pass'];
  const rankAfter = (id: string) => rank[later.get(id)?.severity ?? 'pass'];
  const worse = after
    .filter((check) => rank[check.severity] > rankBefore(check.id))
    .toSorted((one, other) => rank[other.severity] - rank[one.severity]);
  if (worse[0]) return { kind: 'worse', check: worse[0], more: worse.length - 1 };
  const cleared = before
    .filter((check) => rank[check.severity] > rankAfter(check.id))
    .toSorted((one, other) => rank[other.severity] - rank[one.severity]);
  return cleared[0] ? { kind: 'cleared', check: cleared[0], more: cleared.length - 1 } : null;
}
