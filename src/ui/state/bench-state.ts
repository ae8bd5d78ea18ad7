import type { Evaluation } from '../../calc/evaluation';
import type { BuildStep } from '../../plan/build-log';
import type { Command } from '../../plan/commands';
import type { Path } from '../../plan/commands/path';
import type { Plan } from '../../plan/plan';
import type { Tint } from '../../sheets/tint-panels';
import type { From } from '../../sheets/unrolled-grid';
import type { BenchPlace, History } from './history';
import type { PageId } from './pages';
import type { Selection } from './selection';

export type DrawingView = 'stage' | 'unrolled' | 'above';

/** How the drawing is looked at; belongs to the screen, never to the plan. */
export interface DrawingState {
  readonly view: DrawingView;
  /** Surface that Unrolled shows; null: the first. */
  readonly surfaceId: string | null;
  /** Side from which Unrolled is seen; behind is where the crew stands. */
  readonly from: From;
  /** What panels are tinted by: a help on the screen, off in print. */
  readonly tint: Tint;
  /** True while a drag on Unrolled wires by hand, on the page of runs. */
  readonly wires: boolean;
  /** True while view and tint follow the page; a choice by hand ends it. */
  readonly follows: boolean;
}

/** How the page of faults is looked at; belongs to the screen, never to the plan. */
export interface FaultsState {
  /** lost: what is darkened by the part that is picked; cause: which part darkened the panels that are picked as dark. */
  readonly asks: 'lost' | 'cause';
  /** What a press on the drawing marks as dark, or as lit again. */
  readonly marks: 'panel' | 'run' | 'column';
  /** True while a drag on Unrolled marks all panels of a rectangle. */
  readonly bands: boolean;
  /** Numbers of the panels picked as dark, in rising order. */
  readonly dark: readonly number[];
}

/** How the build log is looked at; belongs to the screen, never to the plan. */
export interface LogLook {
  /** The step that the drawing marks on the page of the log; null: none. */
  readonly step: BuildStep | null;
}

/** How the page of revisions is looked at; belongs to the screen, never to the plan. */
export interface ComparedLook {
  /** Revision that is the old state, by its id; null: the last one issued. */
  readonly from: string | null;
  /** Revision that is the new state; null: the plan as it is now. */
  readonly to: string | null;
  /** Whether the drawing marks the panels that changed between the old state and now. */
  readonly marks: boolean;
}

/** A change that is looked at and not yet made. */
export interface Preview {
  readonly label: string;
  readonly command: Command;
  readonly plan: Plan;
  /** Null until it is worked out. */
  readonly evaluation: Evaluation | null;
}

export interface BenchState {
  /** Key under which the open document is kept; changes only when another document is opened. */
  readonly documentKey: string;
  /** Counts loads, so that autosave tells a load from a change. */
  readonly loads: number;
  readonly plan: Plan;
  /** Counts every plan that was shown: loads, changes, undos. */
  readonly revision: number;
  /** Everything that follows from the plan; null until the first evaluation of a large document is there. */
  readonly evaluation: Evaluation | null;
  /** True while `evaluation` belongs to an earlier revision. */
  readonly recomputing: boolean;
  /** Why the newest plan could not be evaluated: a fault of the program, never of the plan. */
  readonly failure: string | null;
  readonly history: History;
  readonly preview: Preview | null;
  readonly selection: Selection | null;
  /** A name that is picked as soon as the plan is worked out, such as that of a link. */
  readonly sought: string | null;
  readonly page: PageId;
  /** A field that asks for the focus once its page is there; `serial` tells two askings of one field apart. */
  readonly asked: { readonly field: string; readonly serial: number } | null;
  readonly drawing: DrawingState;
  readonly faults: FaultsState;
  readonly log: LogLook;
  readonly compared: ComparedLook;
  /** BCP 47 tag that figures are written in. */
  readonly locale: string;
  /** True while another tab writes this document and this one only follows. */
  readonly follows: boolean;
}

export type Dispatched = { readonly done: true } | { readonly refused: string; readonly path?: string };

export interface DispatchOptions {
  /** Changes in a row with the same key are one undo step: one per field for a burst, one per gesture for a drag. */
  readonly mergeKey?: string;
  /** Longest pause between merged changes; 2 s unless stated, Infinity for a drag. */
  readonly mergeWithinMs?: number;
  /** Where undo goes back to; worked out from the command where left out. */
  readonly place?: BenchPlace;
}

/** Everything that a person can do to the bench. */
export interface BenchActions {
  /** Runs a command on the plan as one undoable step. */
  dispatch(command: Command, options?: DispatchOptions): Dispatched;
  /** Sets one field; the common case of `dispatch`. */
  setField(path: Path, value: unknown, label?: string, options?: DispatchOptions): Dispatched;
  undo(): void;
  redo(): void;
  /** Shows what a command would do and leaves the plan untouched. */
  startPreview(command: Command): Dispatched;
  /** Makes the previewed change. */
  keepPreview(): void;
  endPreview(): void;
  select(selection: Selection | null): void;
  /** Picks what has this name and brings it into the drawing, at once or when the plan is worked out; a name of nothing picks nothing. */
  seek(name: string): void;
  setFaults(change: Partial<FaultsState>): void;
  setCompared(change: Partial<ComparedLook>): void;
  /** Marks these panels as dark, or as lit where all of them were dark. */
  toggleDark(panels: readonly number[]): void;
  setLog(look: LogLook): void;
  goTo(page: PageId, field?: string): void;
  setDrawing(change: Partial<DrawingState>): void;
  /** Opens another document: history, selection and preview start empty. */
  open(documentKey: string, plan: Plan, options?: { readonly follows?: boolean; readonly page?: PageId }): void;
  /** Takes over what another tab wrote into the same document; the view stays where it is. */
  follow(plan: Plan): void;
  setFollows(follows: boolean): void;
}
