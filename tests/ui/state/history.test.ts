import { expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan';
import { emptyHistory, type HistoryStep, recordStep, stepBack, stepForward } from '../../../src/ui/state/history';

const planCalled = (name: string) => ({ name }) as Plan;

function step(from: string, to: string, more: Partial<HistoryStep> = {}): HistoryStep {
  const place = { page: 'walls', field: null } as const;
  return { label: to, before: planCalled(from), after: planCalled(to), place, mergeKey: null, atMs: 0, ...more };
}

test('recordStep then stepBack gives the step and a history that can bring it back', () => {
  const history = recordStep(recordStep(emptyHistory, step('a', 'b'), 0), step('b', 'c'), 0);
  const back = stepBack(history);
  expect(back?.step.before.name).toBe('b');
  expect(stepForward(back!.history)?.step.after.name).toBe('c');
  expect(stepForward(back!.history)?.history.past).toHaveLength(2);
});

test('stepBack and stepForward at the ends give null', () => {
  expect(stepBack(emptyHistory)).toBeNull();
  expect(stepForward(recordStep(emptyHistory, step('a', 'b'), 0))).toBeNull();
});

test('recordStep merges steps of one key within the pause into one that goes back to the first plan', () => {
  const first = recordStep(emptyHistory, step('a', 'b', { mergeKey: 'field', atMs: 0 }), 100);
  const second = recordStep(first, step('b', 'c', { mergeKey: 'field', atMs: 100 }), 100);
  const third = recordStep(second, step('c', 'd', { mergeKey: 'field', atMs: 200 }), 100);
  expect(third.past).toHaveLength(1);
  expect(stepBack(third)?.step.before.name).toBe('a');
  expect(stepBack(third)?.step.after.name).toBe('d');
});

test.each([
  ['after the pause', { mergeKey: 'field', atMs: 101 }],
  ['of another key', { mergeKey: 'other', atMs: 1 }],
  ['without a key', { mergeKey: null, atMs: 1 }],
])('recordStep keeps a step %s apart', (_name, more) => {
  const first = recordStep(emptyHistory, step('a', 'b', { mergeKey: 'field' }), 100);
  expect(recordStep(first, step('b', 'c', more), 100).past).toHaveLength(2);
});

test('recordStep after an undo forgets what could be redone, and does not merge into what was before', () => {
  const history = recordStep(emptyHistory, step('a', 'b', { mergeKey: 'field' }), 100);
  const twice = recordStep(history, step('b', 'c', { mergeKey: 'other' }), 100);
  const back = stepBack(twice)!.history;
  const next = recordStep(back, step('b', 'd', { mergeKey: 'field', atMs: 1 }), 100);
  expect(next.past.map((one) => one.after.name)).toEqual(['b', 'd']);
  expect(next.future).toEqual([]);
});

test('a redone step takes no later change into itself', () => {
  const history = recordStep(emptyHistory, step('a', 'b', { mergeKey: 'field' }), 100);
  const redone = stepForward(stepBack(history)!.history)!.history;
  expect(recordStep(redone, step('b', 'c', { mergeKey: 'field', atMs: 1 }), 100).past).toHaveLength(2);
});

test('recordStep keeps the newest thousand steps', () => {
  let history = emptyHistory;
  for (let i = 0; i < 1005; i++) history = recordStep(history, step(`${i}`, `${i + 1}`), 0);
  expect(history.past).toHaveLength(1000);
  expect(history.past[0]?.before.name).toBe('5');
});
