import { createStore, delMany, get, getMany, keys, setMany, type UseStore } from 'idb-keyval';
import { type KeptEntry, type PlanShelf, ShelfError } from './plan-shelf';

const textOf = (key: string) => `text ${key}`;
const entryOf = (key: string) => `entry ${key}`;

function isKeptEntry(value: unknown): value is KeptEntry {
  const entry = value as Partial<KeptEntry> | null | undefined;
  return (
    typeof entry?.key === 'string' &&
    typeof entry.name === 'string' &&
    typeof entry.revision === 'string' &&
    (entry.planId === undefined || typeof entry.planId === 'string') &&
    typeof entry.keptAtMs === 'number'
  );
}

function shelfErrorOf(error: unknown): ShelfError {
  const reason = error instanceof Error ? error.message : String(error);
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  return new ShelfError(full ? 'full' : 'refused', reason);
}

/** Plans in this browser's IndexedDB: the text of each and, apart from it, what the list shows. */
export function createIndexedDbShelf(database: string): PlanShelf {
  let opened: UseStore | null = null;

  async function ask<Answer>(question: (store: UseStore) => Promise<Answer>): Promise<Answer> {
    try {
      opened ??= createStore(database, 'plans');
      return await question(opened);
    } catch (error) {
      opened = null;
      throw shelfErrorOf(error);
    }
  }

  return {
    list: () =>
      ask(async (store) => {
        const names = (await keys<string>(store)).filter((name) => String(name).startsWith('entry '));
        const entries = (await getMany<unknown>(names, store)).filter(isKeptEntry);
        return entries.toSorted((one, other) => other.keptAtMs - one.keptAtMs);
      }),
    read: (key) =>
      ask(async (store) => {
        const text = await get<unknown>(textOf(key), store);
        if (text === undefined) return null;
        return typeof text === 'string' ? text : JSON.stringify(text);
      }),
    write: (entry, text) =>
      ask((store) =>
        setMany(
          [
            [textOf(entry.key), text],
            [entryOf(entry.key), entry],
          ],
          store,
        ),
      ),
    remove: (key) => ask((store) => delMany([textOf(key), entryOf(key)], store)),
  };
}
