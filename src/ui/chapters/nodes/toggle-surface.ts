/**
 * Surfaces that a step is for once one more is marked, or one fewer: null, which is all of them, where each is marked. The last one
 * stays. Surfaces that are not there any more stay in the list.
 */
export function toggleSurface(
  marked: readonly string[] | null,
  surfaces: readonly string[],
  surfaceId: string,
): readonly string[] | null {
  const before = marked ?? surfaces;
  const after = before.includes(surfaceId) ? before.filter((id) => id !== surfaceId) : [...before, surfaceId];
  if (!after.some((id) => surfaces.includes(id))) return marked;
  return surfaces.every((id) => after.includes(id)) ? null : after;
}
