/** What the list of kept plans shows of one of them, without opening it. */
export interface KeptEntry {
  /** Key of the document; stands in the address. */
  readonly key: string;
  readonly name: string;
  readonly revision: string;
  /** Id that the plan itself carries; missing where it was kept by an earlier version. */
  readonly planId?: string;
  readonly keptAtMs: number;
}

/** Why a shelf does not take or give: no room left, or storage is switched off or broken. */
export type ShelfTrouble = 'full' | 'refused';

/** Thrown by every shelf call that storage did not allow. */
export class ShelfError extends Error {
  readonly trouble: ShelfTrouble;

  constructor(trouble: ShelfTrouble, reason: string) {
    super(reason);
    this.name = 'ShelfError';
    this.trouble = trouble;
  }
}

/** Where plans are kept as text, by key. All calls may throw a ShelfError. */
export interface PlanShelf {
  /** Newest first. */
  list(): Promise<readonly KeptEntry[]>;
  /** The text as it was written; null where there is none. */
  read(key: string): Promise<string | null>;
  write(entry: KeptEntry, text: string): Promise<void>;
  remove(key: string): Promise<void>;
}
