import type { Said } from './change';

/** What comparing sees of a thing that a crew calls by its name. */
export interface Thing {
  readonly name: string;
  /** Alike in both plans where it is the same thing, whatever it is called. */
  readonly content: string;
  /** What may be otherwise on the same thing: the leg of a circuit, the return of a run. */
  readonly detail: string;
  /** Where the document holds it, whatever it is called and wherever it stands; null or left out: nowhere that is known. */
  readonly anchor?: string | null;
}

/** The things of one kind in one plan; what is said of one is put together only where it changed. */
export interface ThingList {
  readonly things: readonly Thing[];
  readonly sayContent: (index: number) => Said;
  /** Empty where there is nothing to say. */
  readonly sayDetail: (index: number) => Said;
}
