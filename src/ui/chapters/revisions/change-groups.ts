import type { Change, Changed, ChangeKind } from '../../../calc/compare/change';

/** What the table of changes shows: one kind of change and one kind of thing, or all ('all'). */
export interface ChangeFilter {
  readonly kind: ChangeKind | 'all';
  readonly what: Changed | 'all';
}

/** Changes that a filter lets through. */
export function filterChanges(changes: readonly Change[], { kind, what }: ChangeFilter): readonly Change[] {
  if (kind === 'all' && what === 'all') return changes;
  return changes.filter(
    (change) => (kind === 'all' || change.kind === kind) && (what === 'all' || change.what === what),
  );
}

/** Counts of the changes by one of their properties, in the order in which they come up. */
export function countBy<Key extends string>(
  changes: readonly Change[],
  keyOf: (change: Change) => Key,
): ReadonlyMap<Key, number> {
  const counts = new Map<Key, number>();
  for (const change of changes) counts.set(keyOf(change), (counts.get(keyOf(change)) ?? 0) + 1);
  return counts;
}
