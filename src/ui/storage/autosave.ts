import type { Plan } from '../../plan/plan';
import { type PlanShelf, ShelfError, type ShelfTrouble } from './plan-shelf';

/** How the document stands in this browser. */
export type KeptState =
  | { readonly kind: 'kept'; readonly atMs: number }
  | { readonly kind: 'changed' }
  | { readonly kind: 'failed'; readonly trouble: ShelfTrouble; readonly reason: string };

export interface AutosaveParts {
  readonly shelf: PlanShelf;
  readonly serialise: (plan: Plan) => string;
  readonly now: () => number;
  /** Calls back after some milliseconds; the answer calls it off. */
  readonly wait: (ms: number, call: () => void) => () => void;
  readonly onState: (state: KeptState) => void;
  readonly onWritten: (key: string) => void;
}

export interface Autosave {
  /** Takes note of a change; it is written within a second, however many follow. */
  changed(key: string, plan: Plan): void;
  /** Writes at once what waits; resolves when nothing is left to write or writing failed. */
  flush(): Promise<void>;
}

/** Time that changes gather before they are written; later changes do not put it off. */
const gatherMs = 300;
/** Time until a write that failed is tried again. */
const retryMs = 5000;

/** Writes the newest state of each changed document to the shelf, one write at a time. */
export function createAutosave(parts: AutosaveParts): Autosave {
  const pending = new Map<string, Plan>();
  let callOff: (() => void) | null = null;
  let writing: Promise<void> | null = null;
  let failing = false;

  async function writeOne(key: string, plan: Plan): Promise<void> {
    const { id: planId, name, revision } = plan;
    const keptAtMs = parts.now();
    await parts.shelf.write({ key, planId, name, revision, keptAtMs }, parts.serialise(plan));
    failing = false;
    if (pending.size === 0) parts.onState({ kind: 'kept', atMs: keptAtMs });
    parts.onWritten(key);
  }

  async function writeAll(): Promise<void> {
    for (let next = pending.entries().next(); !next.done; next = pending.entries().next()) {
      const [key, plan] = next.value;
      pending.delete(key);
      try {
        await writeOne(key, plan);
      } catch (error) {
        failing = true;
        if (!pending.has(key)) pending.set(key, plan);
        const trouble = error instanceof ShelfError ? error.trouble : 'refused';
        parts.onState({ kind: 'failed', trouble, reason: error instanceof Error ? error.message : String(error) });
        start(retryMs);
        return;
      }
    }
  }

  function write(): Promise<void> {
    callOff?.();
    callOff = null;
    writing ??= writeAll().finally(() => {
      writing = null;
    });
    return writing;
  }

  function start(ms: number): void {
    callOff ??= parts.wait(ms, () => {
      callOff = null;
      void write();
    });
  }

  return {
    changed(key, plan) {
      pending.set(key, plan);
      if (!failing) parts.onState({ kind: 'changed' });
      if (!writing) start(gatherMs);
    },
    flush: () => (pending.size > 0 || writing ? write() : Promise.resolve()),
  };
}
