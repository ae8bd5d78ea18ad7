import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Plan } from '../../plan/plan';
import type { BenchActions, BenchState, DrawingState } from './bench-state';
import { createEvaluationHost, type EvaluationHostParts } from './evaluation-host';
import { emptyHistory } from './history';
import { createPlanActions } from './plan-actions';
import { createPreviewActions } from './preview-actions';
import { takeEvaluated } from './take-evaluated';
import { createViewActions } from './view-actions';

/** What the bench is given from outside; the screen and the preview have an evaluator each. */
export interface BenchParts extends Omit<EvaluationHostParts, 'onEvaluated'> {
  readonly now: () => number;
  readonly locale: string;
  readonly drawing: DrawingState;
}

/** The first document on the bench. */
export type FirstDocument = Pick<BenchState, 'documentKey' | 'plan' | 'page'>;

export interface BenchStore {
  readonly store: StoreApi<BenchState>;
  readonly actions: BenchActions;
}

const emptyState = {
  loads: 1,
  revision: 0,
  evaluation: null,
  recomputing: true,
  failure: null,
  history: emptyHistory,
  preview: null,
  selection: null,
  sought: null,
  faults: { asks: 'lost', marks: 'panel', bands: false, dark: [] },
  log: { step: 'stands' },
  compared: { from: null, to: null, marks: false },
  asked: null,
  follows: false,
} satisfies Partial<BenchState>;

/** The store of the bench, without React: the plan, what follows from it, its history, and how it is looked at. */
export function createBenchStore(parts: BenchParts, first: FirstDocument): BenchStore {
  const { locale, drawing } = parts;
  const store = createStore<BenchState>(() => ({ ...emptyState, ...first, locale, drawing }));
  const { getState, setState } = store;
  const onEvaluated: EvaluationHostParts['onEvaluated'] = (evaluated) => setState(takeEvaluated(getState(), evaluated));
  const screen = createEvaluationHost({ ...parts, onEvaluated });

  // A small plan and its evaluation reach the subscribers together, so that no view sees one without the other.
  function show(plan: Plan, change: Partial<BenchState>): void {
    const evaluated = screen.evaluate(plan);
    const next = { ...getState(), ...change, plan, preview: null, revision: getState().revision + 1 };
    setState(evaluated ? { ...next, ...takeEvaluated(next, evaluated) } : { ...next, recomputing: true });
  }

  const actions: BenchActions = {
    ...createPlanActions({ getState, show, now: parts.now }),
    ...createPreviewActions(store, parts, (command) => actions.dispatch(command)),
    ...createViewActions(store),
    open(documentKey, plan, options = {}) {
      const { loads, page } = getState();
      const { page: opened = page, follows = false } = options;
      show(plan, { ...emptyState, documentKey, loads: loads + 1, page: opened, follows });
    },
    follow: (plan) => show(plan, { loads: getState().loads + 1, history: emptyHistory }),
  };

  const evaluated = screen.evaluate(first.plan);
  if (evaluated) setState(takeEvaluated(getState(), evaluated));
  return { store, actions };
}
