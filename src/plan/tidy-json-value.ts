import type { Path } from './commands/path';

/** Why no document may hold what stands at a place. */
export interface JsonFault {
  readonly path: Path;
  readonly reason: string;
}

/** A record or list still to be looked at, and the way to it, shared with its neighbours. */
interface Waiting {
  readonly value: object;
  readonly key: string | number | null;
  readonly holder: Waiting | null;
}

/** Names that reach into an object's machinery instead of naming a field. */
const machinery = new Set(['__proto__', 'constructor', 'prototype']);
/** The longest list of the schema. A longer one is refused before each of its entries is read. */
const mostEntries = 500_000;

/**
 * Goes once through a value fresh from JSON.parse, without recursion: turns every -0 into 0, in place, and gives the first
 * thing that no document may hold, whatever its schema; undefined where there is none.
 */
export function tidyJsonValue(root: unknown): JsonFault | undefined {
  const waiting: Waiting[] = [];
  const wait = (value: unknown, key: string | number | null, holder: Waiting | null) => {
    if (typeof value === 'object' && value !== null) waiting.push({ value, key, holder });
  };
  wait(root, null, null);
  for (let here = waiting.pop(); here !== undefined; here = waiting.pop()) {
    if (Array.isArray(here.value)) {
      if (here.value.length > mostEntries) return { path: wayTo(here), reason: `at most ${mostEntries} entries` };
      for (const [place, value] of here.value.entries()) {
        if (value === 0) here.value[place] = 0;
        else wait(value, place, here);
      }
      continue;
    }
    const record = here.value as Record<string, unknown>;
    for (const key of Object.keys(record)) {
      if (machinery.has(key)) return { path: [...wayTo(here), key], reason: 'this program knows no such field' };
      if (record[key] === 0) record[key] = 0;
      else wait(record[key], key, here);
    }
  }
  return undefined;
}

function wayTo(place: Waiting): Path {
  const way: (string | number)[] = [];
  for (let here: Waiting | null = place; here !== null; here = here.holder) {
    if (here.key !== null) way.push(here.key);
  }
  return way.reverse();
}
