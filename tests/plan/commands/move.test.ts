import { expect, test } from 'vitest';
import { move } from '../../../src/plan/commands/move';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const path = ['walls', 0, 'path'];

test.each([
  [0, 2, ['back', 'right-arm', 'left-arm']],
  [2, 0, ['right-arm', 'left-arm', 'back']],
  [1, 2, ['left-arm', 'right-arm', 'back']],
])('move brings the entry from place %i to place %i', (from, to, ids) => {
  const after = taken(move.apply(plan, { path, from, to }));
  expect(after.walls[0]!.path.map(({ id }) => id)).toEqual(ids);
  expect(after.walls[0]!.path).toContain(plan.walls[0]!.path[from]);
  expect(changedGroups(plan, after)).toEqual(['walls']);
});

test('move to its own place is no change', () => {
  expect(taken(move.apply(plan, { path, from: 1, to: 1 }))).toBe(plan);
});

test('move refuses what is not there', () => {
  for (const [from, to] of [
    [3, 0],
    [0, 3],
    [-1, 0],
    [0, 0.5],
  ] as const) {
    expect(move.apply(plan, { path, from, to })).toMatchObject({ refused: 'the list has no such entry' });
  }
  expect(move.apply(plan, { path: ['note'], from: 0, to: 0 })).toMatchObject({ refused: 'there is no such list' });
});

test('move is called by its label, else by its list', () => {
  expect(move.label(plan, { path, from: 0, to: 1, label: 'move a segment' })).toBe('move a segment');
  expect(move.label(plan, { path, from: 0, to: 1 })).toBe('reorder path');
});
