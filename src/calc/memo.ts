import { lruMemoize } from 'reselect';

/** Edits whose results are still at hand when undo goes back to them. */
const remembered = 8;

/** Remembers a function's last results by identity of its arguments. */
export function memo<Arguments extends unknown[], Result>(
  fn: (...args: Arguments) => Result,
): (...args: Arguments) => Result {
  return lruMemoize(fn, { maxSize: remembered });
}

function sameFields(a: object, b: object): boolean {
  const keys = Object.keys(a) as (keyof typeof a)[];
  return keys.length === Object.keys(b).length && keys.every((key) => Object.is(a[key], b[key]));
}

function sameRecords(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
  return a.every((record, i) => sameFields(record as object, b[i] as object));
}

/**
 * Takes a part of every record of a list. A list whose parts are all as before is the list of before, so that an edit
 * of another part recomputes nothing behind it.
 */
export function memoView<Item, View extends object>(
  take: (item: Item) => View,
): (items: readonly Item[]) => readonly View[] {
  return lruMemoize((items: readonly Item[]) => items.map(take), {
    maxSize: remembered,
    resultEqualityCheck: sameRecords,
  });
}

/** The same for a single record put together from parts. */
export function memoRecord<Arguments extends unknown[], View extends object>(
  take: (...args: Arguments) => View,
): (...args: Arguments) => View {
  return lruMemoize(take, {
    maxSize: remembered,
    resultEqualityCheck: (a: unknown, b: unknown) => sameFields(a as object, b as object),
  });
}
