import type { Path } from './path';

/** What holds the last key of a path, and that key. */
export interface Holder {
  readonly holder: Record<string | number, unknown>;
  readonly key: string | number;
}

/**
 * Walks to the record or list that holds the last key of `path`; undefined where the way ends before.
 * Only own keys count, and a list has only its places: neither `length` nor anything inherited is a field.
 */
export function findHolder(root: unknown, path: Path): Holder | undefined {
  const last = path.at(-1);
  if (last === undefined) return undefined;
  let here: unknown = root;
  for (const key of path.slice(0, -1)) {
    if (!hasField(here, key)) return undefined;
    here = here[key];
  }
  return hasField(here, last) ? { holder: here, key: last } : undefined;
}

/** The list at `path`; undefined where there is no list. */
export function findList(root: unknown, path: Path): unknown[] | undefined {
  const found = findHolder(root, path);
  const list = found?.holder[found.key];
  return Array.isArray(list) ? list : undefined;
}

function hasField(value: unknown, key: string | number): value is Record<string | number, unknown> {
  if (typeof value !== 'object' || value === null) return false;
  if (Array.isArray(value)) return typeof key === 'number' && Number.isInteger(key) && key >= 0 && key < value.length;
  return Object.hasOwn(value, key);
}
