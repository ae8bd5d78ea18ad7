import { expect, test } from 'vitest';
import { insert } from '../../../src/plan/commands/insert';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const path = ['walls', 0, 'path'];
const value = { id: 'extra', columns: 2, jointDeg: 0, mixed: null, jointBeforeDeg: 0 };

test.each([
  [0, ['extra', 'left-arm', 'back', 'right-arm']],
  [2, ['left-arm', 'back', 'extra', 'right-arm']],
  [3, ['left-arm', 'back', 'right-arm', 'extra']],
])('insert puts an entry at place %i', (index, ids) => {
  const after = taken(insert.apply(plan, { path, index, value }));
  expect(after.walls[0]!.path.map(({ id }) => id)).toEqual(ids);
  expect(changedGroups(plan, after)).toEqual(['walls']);
  expect(after.walls[0]!.path).toContain(plan.walls[0]!.path[0]);
});

test('insert refuses places and lists that are not there', () => {
  for (const index of [-1, 4, 0.5, Number.NaN]) {
    expect(insert.apply(plan, { path, index, value })).toMatchObject({ refused: 'the list has no such place' });
  }
  expect(insert.apply(plan, { path: ['walls', 0, 'name'], index: 0, value })).toEqual({
    refused: 'there is no such list',
    path: 'walls[0].name',
  });
});

test('insert refuses an entry that the schema does not take, and an id that is taken', () => {
  expect(insert.apply(plan, { path, index: 0, value: { ...value, columns: 0 } })).toEqual({
    refused: 'at least 1',
    path: 'walls[0].path[0].columns',
  });
  expect(insert.apply(plan, { path, index: 0, value: { ...value, id: 'back' } })).toEqual({
    refused: `'back' stands here twice`,
    path: 'walls[0].path[2].id',
  });
});

test('insert is called by its label, else by its list', () => {
  expect(insert.label(plan, { path, index: 0, value, label: 'add a segment' })).toBe('add a segment');
  expect(insert.label(plan, { path, index: 0, value })).toBe('add to path');
});
