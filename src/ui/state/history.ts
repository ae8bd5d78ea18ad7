import type { Plan } from '../../plan/plan';
import type { PageId } from './pages';

/** Where a change was made: undo goes back there. */
export interface BenchPlace {
  readonly page: PageId;
  /** Path of the field in the plan; null where the change is not of one field. */
  readonly field: string | null;
}

/** One change as two plans that share most of their structure. */
export interface HistoryStep {
  /** Words after 'Undo'. */
  readonly label: string;
  readonly before: Plan;
  readonly after: Plan;
  readonly place: BenchPlace;
  /** Changes in a row with the same key are one step; null never merges. */
  readonly mergeKey: string | null;
  readonly atMs: number;
}

export interface History {
  /** Oldest first. */
  readonly past: readonly HistoryStep[];
  /** Next to redo first. */
  readonly future: readonly HistoryStep[];
}

export const emptyHistory: History = { past: [], future: [] };

/** Steps kept; older ones are forgotten. */
const stepsMost = 1000;

/** Adds a step, or merges it into the last one when the keys are equal and no more than `mergeWithinMs` lie between them. */
export function recordStep(history: History, step: HistoryStep, mergeWithinMs: number): History {
  const last = history.past.at(-1);
  const merges =
    last !== undefined &&
    step.mergeKey !== null &&
    last.mergeKey === step.mergeKey &&
    history.future.length === 0 &&
    step.atMs - last.atMs <= mergeWithinMs;
  if (merges) return { past: [...history.past.slice(0, -1), { ...step, before: last.before }], future: [] };
  return { past: [...history.past.slice(-(stepsMost - 1)), step], future: [] };
}

/** The step to undo and the history without it; null where there is none. */
export function stepBack(history: History): { readonly step: HistoryStep; readonly history: History } | null {
  const step = history.past.at(-1);
  if (!step) return null;
  return { step, history: { past: history.past.slice(0, -1), future: [step, ...history.future] } };
}

/** The step to redo and the history with it; null where there is none. A redone step takes no later change into itself. */
export function stepForward(history: History): { readonly step: HistoryStep; readonly history: History } | null {
  const [step, ...future] = history.future;
  if (!step) return null;
  return { step, history: { past: [...history.past, { ...step, mergeKey: null }], future } };
}
