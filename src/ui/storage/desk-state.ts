import type { ShareRefusal } from '../../files/share-link';
import type { TickLinkRefusal } from '../../files/tick-link';
import type { Plan } from '../../plan/plan';
import type { TickList } from '../../plan/tick-list';
import type { BenchStore } from '../state/create-bench-store';
import type { PageId } from '../state/pages';
import type { KeptState } from './autosave';
import type { ReadFile } from './plan-file';
import type { KeptEntry } from './plan-shelf';
import type { ViewMemory } from './view-memory';

/** What could not be opened, why, and its text where there is one: it is never thrown away. */
export interface Problem {
  readonly kind: ShareRefusal | TickLinkRefusal | 'missing' | 'not-kept';
  /** Where it came from: a file, what this browser kept, or a link. */
  readonly from: 'file' | 'browser' | 'link';
  readonly name: string;
  readonly sentence: string;
  /** Where in the file, such as walls[0].path[1].columns; null where it is the whole. */
  readonly path: string | null;
  readonly text: string | null;
}

/** The file that holds the document as it was last opened from or saved to. */
export interface Filed {
  readonly plan: Plan;
  readonly fileName: string;
  readonly handle: FileSystemFileHandle | null;
  readonly atMs: number;
}

export interface DeskState {
  /** Null until a first document is open. */
  readonly bench: BenchStore | null;
  readonly problem: Problem | null;
  readonly kept: KeptState;
  readonly filed: Filed | null;
  /** True where this browser kept no plan before. */
  readonly firstVisit: boolean;
  readonly memory: ViewMemory;
  /** Ticks that somebody brought and that no plan has taken in yet. */
  readonly ticks: TickList | null;
}

/** What the desk does with documents as wholes. */
export interface DeskActions {
  /** Opens what the address names or carries, else the plan kept last, else the sample. */
  start(hash: string): Promise<void>;
  /** Follows an address that changed under the page: another document, or another page of this one. */
  visit(hash: string): Promise<void>;
  openKept(key: string, page?: PageId): Promise<void>;
  /** Opens a file as a document of its own, or holds the ticks that are in it; a broken one becomes a problem and changes nothing. */
  openFile(file: ReadFile): Promise<void>;
  openSample(): Promise<void>;
  openBlank(): Promise<void>;
  /** Opens the plan that another tab writes as a document of its own. */
  takeCopy(): Promise<void>;
  /** Opens the read-only copy on the bench as a plan of one's own: another document with another plan id. */
  makeMine(): Promise<void>;
  /** Lets go the ticks that were held. */
  dropTicks(): void;
  refuse(problem: Problem): void;
  closeProblem(): void;
  noteFiled(filed: Filed): void;
  /** Remembers how this person likes to look at plans. */
  remember(change: Partial<ViewMemory>): void;
  list(): Promise<readonly KeptEntry[]>;
  forget(key: string): Promise<void>;
  flush(): Promise<void>;
}
