import { expect, test } from 'vitest';
import { removeSurface } from '../../../src/plan/commands/remove-surface';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('version-2');

test('remove-surface takes a ceiling out with what is stated for it alone', () => {
  const after = taken(removeSurface.apply(plan, { surfaceId: 'first' }));
  expect(after.ceilings.map(({ id }) => id)).toEqual(['second', 'third']);
  expect(after.picture.bySurface).toEqual([]);
  expect(after.signal.bySurface).toEqual([]);
  expect(changedGroups(plan, after)).toEqual(['ceilings', 'picture', 'signal']);
});

test('remove-surface takes a wall out of the rates that must be served, and one that served only it', () => {
  const after = taken(removeSurface.apply(plan, { surfaceId: 'wall' }));
  expect(after.walls).toEqual([]);
  // 'television' was served on the wall alone; 'slow' is served everywhere.
  expect(after.picture.alsoServe.map(({ id }) => id)).toEqual(['slow']);
  const both = structuredClone(plan);
  both.picture.alsoServe[0]!.surfaceIds = ['wall', 'second'];
  expect(taken(removeSurface.apply(both, { surfaceId: 'wall' })).picture.alsoServe[0]!.surfaceIds).toEqual(['second']);
});

test('remove-surface lets hand changes and alternatives rest in the file', () => {
  const after = taken(removeSurface.apply(plan, { surfaceId: 'wall' }));
  expect(after.handChanges).toBe(plan.handChanges);
  expect(after.alternatives).toBe(plan.alternatives);
});

test('remove-surface touches only what the surface is in', () => {
  expect(changedGroups(plan, taken(removeSurface.apply(plan, { surfaceId: 'third' })))).toEqual(['ceilings']);
});

test('remove-surface refuses one that is not there, and says letter and name', () => {
  expect(removeSurface.apply(plan, { surfaceId: 'gone' })).toEqual({ refused: `there is no surface 'gone'` });
  expect(removeSurface.label(plan, { surfaceId: 'wall' })).toBe('remove A Wall');
});
