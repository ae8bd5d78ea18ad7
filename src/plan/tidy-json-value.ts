import type { Path } from './commands/path';

/** Names that reach into an object's machinery instead of naming a field. */
const machinery = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Goes once through a value fresh from JSON.parse, without recursion: turns every -0 into 0, in place, and gives the path of
 * the first key that no document may have; undefined where there is none.
 */
export function tidyJsonValue(root: unknown): Path | undefined {
  const waiting: { readonly value: object; readonly path: Path }[] = [];
  if (typeof root === 'object' && root !== null) waiting.push({ value: root, path: [] });
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const isList = Array.isArray(next.value);
    const holder = next.value as Record<string, unknown>;
    for (const key of Object.keys(holder)) {
      const path = () => [...next!.path, isList ? Number(key) : key];
      if (machinery.has(key)) return path();
      const value = holder[key];
      if (value === 0) holder[key] = 0;
      else if (typeof value === 'object' && value !== null) waiting.push({ value, path: path() });
    }
  }
  return undefined;
}
