import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import type { EvaluationLine } from '../../../src/ui/state/evaluation-host';
import { fakeBench, fakeEvaluation, somePlan } from './fake-bench';

const setCameras = (value: number) => ({
  name: 'set-fields' as const,
  args: { fields: [{ path: ['wish', 'camerasAtOnce'], value }], label: 'cameras at once' },
});

test('the bench starts with its plan evaluated', () => {
  const { store } = fakeBench();
  expect(store.getState()).toMatchObject({ recomputing: false, failure: null, documentKey: 'key-1', revision: 0 });
  expect(store.getState().evaluation).not.toBeNull();
});

test('dispatch shows the next plan and its evaluation together, never one without the other', () => {
  const { store, actions } = fakeBench();
  const seen: (readonly [number, number])[] = [];
  store.subscribe(({ plan, evaluation }) => seen.push([plan.wish.camerasAtOnce, evaluation!.headline.panels]));
  expect(actions.dispatch(setCameras(3))).toEqual({ done: true });
  expect(seen).toEqual([[3, 3]]);
});

test('dispatch that is refused changes nothing and says why and where', () => {
  const { store, actions } = fakeBench();
  const before = store.getState();
  const outcome = actions.dispatch(setCameras(-1));
  expect(outcome).toMatchObject({ path: 'wish.camerasAtOnce' });
  expect(store.getState()).toBe(before);
});

test('dispatch that sets what already stands is done and no step', () => {
  const { store, actions } = fakeBench();
  expect(actions.dispatch(setCameras(somePlan.wish.camerasAtOnce))).toEqual({ done: true });
  expect(store.getState().history.past).toEqual([]);
});

test('undo and redo bring back the very plans, with the label of what they take back', () => {
  const { store, actions } = fakeBench();
  actions.dispatch(setCameras(3));
  const changed = store.getState().plan;
  expect(store.getState().history.past[0]?.label).toBe('cameras at once');
  actions.undo();
  expect(store.getState().plan).toBe(somePlan);
  actions.redo();
  expect(store.getState().plan).toBe(changed);
  actions.redo();
  expect(store.getState().plan).toBe(changed);
});

test('undo goes back to the page and the field that it changed, and asks anew each time', () => {
  const { store, actions } = fakeBench();
  actions.goTo('power');
  actions.dispatch(setCameras(3));
  actions.undo();
  expect(store.getState().page).toBe('wish');
  const first = store.getState().asked;
  expect(first?.field).toBe('wish.camerasAtOnce');
  actions.redo();
  expect(store.getState().asked).toMatchObject({ field: 'wish.camerasAtOnce' });
  expect(store.getState().asked?.serial).not.toBe(first?.serial);
});

test('a burst in one field is one step; after a pause a new one begins', () => {
  const { store, actions, pass } = fakeBench();
  const type = (value: number) =>
    actions.setField(['wish', 'camerasAtOnce'], value, 'cameras', { mergeKey: 'cameras' });
  type(2);
  pass(500);
  type(3);
  pass(500);
  type(4);
  expect(store.getState().history.past).toHaveLength(1);
  pass(2001);
  type(5);
  expect(store.getState().history.past).toHaveLength(2);
  actions.undo();
  expect(store.getState().plan.wish.camerasAtOnce).toBe(4);
  actions.undo();
  expect(store.getState().plan).toBe(somePlan);
});

test('any changes undo and redo to identical states', () => {
  const { store, actions } = fakeBench();
  const plans = [store.getState().plan];
  for (const value of [4, 2, 9, 7]) {
    actions.dispatch(setCameras(value));
    plans.push(store.getState().plan);
  }
  for (const plan of plans.slice(0, -1).toReversed()) {
    actions.undo();
    expect(store.getState().plan).toBe(plan);
  }
  for (const plan of plans.slice(1)) {
    actions.redo();
    expect(store.getState().plan).toBe(plan);
  }
});

test('startPreview shows a change and leaves the plan, its evaluation and the history untouched', () => {
  const { store, actions } = fakeBench();
  const { plan, evaluation, history } = store.getState();
  actions.startPreview(setCameras(4));
  expect(store.getState()).toMatchObject({ plan, evaluation, history });
  expect(store.getState().preview).toMatchObject({ label: 'cameras at once', evaluation: { headline: { panels: 4 } } });
  actions.endPreview();
  expect(store.getState().preview).toBeNull();
  expect(store.getState().plan).toBe(plan);
});

test('keepPreview makes the change as one undoable step', () => {
  const { store, actions } = fakeBench();
  actions.startPreview(setCameras(4));
  actions.keepPreview();
  expect(store.getState()).toMatchObject({ preview: null, plan: { wish: { camerasAtOnce: 4 } } });
  actions.undo();
  expect(store.getState().plan).toBe(somePlan);
});

test('a change ends a preview', () => {
  const { store, actions } = fakeBench();
  actions.startPreview(setCameras(4));
  actions.dispatch(setCameras(5));
  expect(store.getState()).toMatchObject({ preview: null, plan: { wish: { camerasAtOnce: 5 } } });
});

test('a tab that follows refuses changes, undo and redo, and shows what the other wrote', () => {
  const { store, actions } = fakeBench();
  actions.dispatch(setCameras(3));
  const { plan, loads } = store.getState();
  actions.setFollows(true);
  expect(actions.dispatch(setCameras(4))).toHaveProperty('refused');
  actions.undo();
  expect(store.getState().plan).toBe(plan);
  actions.follow(somePlan);
  expect(store.getState()).toMatchObject({ plan: somePlan, loads: loads + 1, history: { past: [] } });
});

test('open starts a document with an empty history and counts a load', () => {
  const { store, actions } = fakeBench();
  actions.dispatch(setCameras(3));
  actions.select({ kind: 'panel', index: 0, name: 'C1 R1' });
  const { loads } = store.getState();
  actions.open('key-2', somePlan, { page: 'wish' });
  expect(store.getState()).toMatchObject({
    documentKey: 'key-2',
    page: 'wish',
    selection: null,
    loads: loads + 1,
    history: { past: [], future: [] },
  });
});

test('a selection is found again by its name after a change, and dropped where it is gone', () => {
  let columns = 12;
  const { store, actions } = fakeBench({
    createEvaluator: () => ({ evaluate: (plan) => fakeEvaluation(plan, columns) }),
  });
  const index = 11 * 6 + 2;
  actions.select({ kind: 'panel', index, name: 'C12 R3' });
  columns = 14;
  actions.dispatch(setCameras(3));
  expect(store.getState().selection).toEqual({ kind: 'panel', index, name: 'C12 R3' });
  columns = 8;
  actions.dispatch(setCameras(4));
  expect(store.getState().selection).toBeNull();
});

test('an evaluation that throws keeps the plan, the last figures and the reason', () => {
  const { store, actions } = fakeBench({
    createEvaluator: () => ({
      evaluate(plan) {
        if (plan.wish.camerasAtOnce === 7) throw new Error('broken');
        return fakeEvaluation(plan);
      },
    }),
  });
  const { evaluation } = store.getState();
  actions.dispatch(setCameras(7));
  expect(store.getState()).toMatchObject({ failure: 'broken', evaluation, plan: { wish: { camerasAtOnce: 7 } } });
  actions.undo();
  expect(store.getState().failure).toBeNull();
});

test('a large plan keeps the old figures, marked as recomputing, until the worker answers', async () => {
  const answers: ((changed: Partial<Evaluation>) => void)[] = [];
  const ask = () => new Promise<Partial<Evaluation>>((resolve) => answers.push(resolve));
  const line: EvaluationLine = { open: ask, change: ask, close: () => undefined };
  const { store, actions } = fakeBench({ isLarge: (plan) => plan.wish.camerasAtOnce > 3, startLine: () => line });
  const old = store.getState().evaluation;
  actions.dispatch(setCameras(8));
  expect(store.getState()).toMatchObject({ recomputing: true, evaluation: old });
  answers[0]!(fakeEvaluation(store.getState().plan));
  await new Promise((resolve) => setTimeout(resolve));
  expect(store.getState()).toMatchObject({ recomputing: false, evaluation: { headline: { panels: 8 } } });
});
