/**
 * Surfaces that a rate must be served on once one of `all` is taken in or left out; null: every surface, whichever they are.
 * Ids of surfaces that are gone are dropped. The last one stays: a rate served nowhere is none.
 */
export function serveOn(
  surfaceIds: readonly string[] | null,
  all: readonly string[],
  surfaceId: string,
  isServed: boolean,
): readonly string[] | null {
  const next = all.filter((id) => (id === surfaceId ? isServed : surfaceIds === null || surfaceIds.includes(id)));
  if (next.length === 0) return surfaceIds;
  return next.length === all.length ? null : next;
}
