import { type KeptEntry, type PlanShelf, ShelfError, type ShelfTrouble } from '../../../src/ui/storage/plan-shelf';

export interface MemoryShelf extends PlanShelf {
  /** Every write in order, as key and text. */
  readonly writes: readonly (readonly [key: string, text: string])[];
  /** From now on every call is refused so; null lets them through again. */
  refuse(trouble: ShelfTrouble | null): void;
  put(key: string, text: string, keptAtMs?: number): void;
}

/** A shelf that lives in memory; several tabs of a test share one. */
export function createMemoryShelf(): MemoryShelf {
  const entries = new Map<string, KeptEntry>();
  const texts = new Map<string, string>();
  const writes: (readonly [string, string])[] = [];
  let trouble: ShelfTrouble | null = null;
  const allow = async () => {
    if (trouble) throw new ShelfError(trouble, `storage is ${trouble}`);
  };
  return {
    writes,
    refuse: (next) => {
      trouble = next;
    },
    put(key, text, keptAtMs = 0) {
      texts.set(key, text);
      entries.set(key, { key, name: key, revision: '', keptAtMs });
    },
    async list() {
      await allow();
      return [...entries.values()].toSorted((one, other) => other.keptAtMs - one.keptAtMs);
    },
    async read(key) {
      await allow();
      return texts.get(key) ?? null;
    },
    async write(entry, text) {
      await allow();
      entries.set(entry.key, entry);
      texts.set(entry.key, text);
      writes.push([entry.key, text]);
    },
    async remove(key) {
      await allow();
      entries.delete(key);
      texts.delete(key);
    },
  };
}
