import type { Path } from '../../plan/commands/path';

/** What a plan holds at a path; undefined where the path leads nowhere. */
export function fieldAt(root: unknown, path: Path): unknown {
  let at: unknown = root;
  for (const key of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Record<string | number, unknown>)[key];
  }
  return at;
}
