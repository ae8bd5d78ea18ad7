import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import type { Evaluated } from '../../../src/ui/state/evaluation-host';
import { takeEvaluated } from '../../../src/ui/state/take-evaluated';
import { fakeBench, fakeEvaluation, somePlan } from './fake-bench';

test('seek picks what has the name and brings its surface into the drawing', () => {
  const { store, actions } = fakeBench();
  actions.seek('N1');
  const { selection, drawing, evaluation } = store.getState();
  expect(selection).toMatchObject({ kind: 'part', part: 'node', name: 'node N1' });
  expect(drawing.surfaceId).toBe(evaluation?.surfaces.surfaces[0]?.surfaceId);
});

test('seek of a name that nothing has leaves what is picked', () => {
  const { store, actions } = fakeBench();
  actions.seek('C3 R2');
  actions.seek('C99 R1');
  expect(store.getState()).toMatchObject({ selection: { name: 'C3 R2' }, sought: null });
});

test('what is sought before the plan is worked out is picked then', () => {
  const { store } = fakeBench();
  const state = { ...store.getState(), evaluation: null, sought: 'C3 R2' };
  const evaluated: Evaluated = { evaluation: fakeEvaluation(somePlan) as Evaluation };
  expect(takeEvaluated(state, evaluated)).toMatchObject({ sought: null, selection: { kind: 'panel', index: 13 } });
});

test('toggleDark marks panels, and takes the marks away where all of them were marked', () => {
  const { store, actions } = fakeBench();
  actions.toggleDark([5, 3]);
  actions.toggleDark([3, 4]);
  expect(store.getState().faults.dark).toEqual([3, 4, 5]);
  actions.toggleDark([3, 4, 5]);
  expect(store.getState().faults.dark).toEqual([]);
});

test('what is picked and what is dark outlives a turn of the page and an undo, and not another document', () => {
  const { store, actions } = fakeBench();
  actions.seek('C3 R2');
  actions.setFaults({ asks: 'cause' });
  actions.toggleDark([7]);
  actions.goTo('power');
  actions.setField(['name'], 'Another name');
  actions.undo();
  expect(store.getState()).toMatchObject({ selection: { name: 'C3 R2' }, faults: { asks: 'cause', dark: [7] } });
  actions.open('key-2', somePlan);
  expect(store.getState()).toMatchObject({ selection: null, faults: { asks: 'lost', dark: [] } });
});
