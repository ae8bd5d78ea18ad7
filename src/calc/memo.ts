import { lruMemoize } from 'reselect';

/** Edits whose results are still at hand when undo goes back to them. */
const remembered = 8;

function sameFields(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a) as (keyof typeof a)[];
  return keys.length === Object.keys(b).length && keys.every((key) => Object.is(a[key], b[key]));
}

function sameRecords(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
  return a.every((record, i) => sameFields(record, b[i]));
}

/** Remembers a function's last results by the fields of its arguments: records put together anew from the same parts are the same. */
export function memo<Arguments extends unknown[], Result>(
  fn: (...args: Arguments) => Result,
): (...args: Arguments) => Result {
  return lruMemoize(fn, { maxSize: remembered, equalityCheck: sameFields });
}

/**
 * Takes a part of every record of a list. A list whose parts are all as before is the list of before, so that an edit
 * of another part recomputes nothing behind it.
 */
export function memoView<Item, View extends object>(
  take: (item: Item) => View,
): (items: readonly Item[]) => readonly View[] {
  return lruMemoize((items: readonly Item[]): readonly View[] => items.map(take), {
    maxSize: remembered,
    resultEqualityCheck: sameRecords,
  });
}
