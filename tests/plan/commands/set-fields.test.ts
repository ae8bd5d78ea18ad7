import { expect, test } from 'vitest';
import { setFields } from '../../../src/plan/commands/set-fields';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');

test('set-fields sets several fields in one step and touches nothing else', () => {
  const after = taken(
    setFields.apply(plan, {
      fields: [
        { path: ['walls', 0, 'path', 1, 'jointDeg'], value: 6 },
        { path: ['wish', 'hall', 'lengthMm'], value: null },
      ],
    }),
  );
  expect(after.walls[0]!.path[1]!.jointDeg).toBe(6);
  expect(after.wish.hall.lengthMm).toBeNull();
  expect(changedGroups(plan, after)).toEqual(['wish', 'walls']);
  expect(after.walls[0]!.path[0]).toBe(plan.walls[0]!.path[0]);
  expect(plan.walls[0]!.path[1]!.jointDeg).toBe(3);
});

test('set-fields sets all fields or none', () => {
  const fields = [
    { path: ['name'], value: 'Other' },
    { path: ['walls', 7, 'baseMm'], value: 0 },
  ];
  expect(setFields.apply(plan, { fields })).toEqual({ refused: 'there is no such field', path: 'walls[7].baseMm' });
  expect(plan.name).not.toBe('Other');
});

test.each([
  [['signal', 'freeShare'], 2, 'at most 0.95', 'signal.freeShare'],
  [['walls', 0, 'baseMm'], 'high', 'a number belongs here', 'walls[0].baseMm'],
  [['walls', 0, 'path'], [], 'at least 1 entries', 'walls[0].path'],
  [['format'], 'other', 'only voussoir-plan may stand here', 'format'],
])('set-fields refuses %j = %j', (path, value, refused, where) => {
  expect(setFields.apply(plan, { fields: [{ path, value }] })).toEqual({ refused, path: where });
});

test('set-fields reaches no machinery', () => {
  for (const path of [['__proto__', 'x'], ['constructor'], ['walls', 'length']]) {
    expect(setFields.apply(plan, { fields: [{ path, value: 1 }] })).toMatchObject({
      refused: 'there is no such field',
    });
  }
});

test('set-fields is called by its label, else by the last key of its first path', () => {
  const fields = [{ path: ['walls', 0, 'baseMm'], value: 0 }];
  expect(setFields.label(plan, { fields, label: 'base height' })).toBe('base height');
  expect(setFields.label(plan, { fields })).toBe('baseMm');
  expect(setFields.label(plan, { fields: [] })).toBe('nothing');
});
