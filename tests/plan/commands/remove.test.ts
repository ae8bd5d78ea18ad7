import { expect, test } from 'vitest';
import { remove } from '../../../src/plan/commands/remove';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const path = ['walls', 0, 'path'];

test('remove takes one entry out', () => {
  const after = taken(remove.apply(plan, { path, index: 1 }));
  expect(after.walls[0]!.path.map(({ id }) => id)).toEqual(['left-arm', 'right-arm']);
  expect(changedGroups(plan, after)).toEqual(['walls']);
});

test('remove refuses what is not there, and the last entry of a list that needs one', () => {
  for (const index of [-1, 3, 0.5]) {
    expect(remove.apply(plan, { path, index })).toMatchObject({ refused: 'the list has no such entry' });
  }
  expect(remove.apply(plan, { path: ['gone'], index: 0 })).toEqual({ refused: 'there is no such list', path: 'gone' });
  expect(remove.apply(plan, { path: ['walls', 0, 'bands'], index: 0 })).toEqual({
    refused: 'at least 1 entries',
    path: 'walls[0].bands',
  });
});

test('remove is called by its label, else by its list', () => {
  expect(remove.label(plan, { path, index: 0, label: 'remove a segment' })).toBe('remove a segment');
  expect(remove.label(plan, { path, index: 0 })).toBe('remove from path');
});
