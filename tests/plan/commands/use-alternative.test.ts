import { expect, test } from 'vitest';
import { useAlternative } from '../../../src/plan/commands/use-alternative';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('version-2');

test('use-alternative swaps it with the wall that stands, and back again', () => {
  const after = taken(useAlternative.apply(plan, { id: 'alternative-1', oldName: 'Curved' }));
  expect(after.walls[0]).toEqual(plan.alternatives[0]!.wall);
  expect(after.alternatives).toEqual([{ id: 'alternative-1', name: 'Curved', wall: plan.walls[0] }]);
  expect(changedGroups(plan, after)).toEqual(['walls', 'alternatives']);
  const back = taken(useAlternative.apply(after, { id: 'alternative-1', oldName: 'Straight' }));
  expect(back).toEqual(plan);
});

test('use-alternative keeps the old wall under its own name where none is given', () => {
  expect(taken(useAlternative.apply(plan, { id: 'alternative-1' })).alternatives[0]!.name).toBe('Wall');
});

test('use-alternative puts the wall back where it was removed', () => {
  const after = taken(useAlternative.apply({ ...plan, walls: [] }, { id: 'alternative-1' }));
  expect(after.walls).toEqual([plan.alternatives[0]!.wall]);
  expect(after.alternatives).toEqual([]);
});

test('use-alternative refuses one that is not there', () => {
  expect(useAlternative.apply(plan, { id: 'gone' })).toEqual({
    refused: `there is no alternative 'gone'`,
    path: 'alternatives',
  });
});

test('use-alternative says its name', () => {
  expect(useAlternative.label(plan, { id: 'alternative-1' })).toBe('use Straight');
});
