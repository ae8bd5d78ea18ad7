import { expect, test } from 'vitest';
import { addWall } from '../../../src/plan/commands/add-wall';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const wall = { ...plan.walls[0]!, id: 'second', letter: 'C', name: 'Second' };

test('add-wall adds it behind the others', () => {
  const after = taken(addWall.apply(plan, { wall }));
  expect(after.walls).toEqual([...plan.walls, wall]);
  expect(changedGroups(plan, after)).toEqual(['walls']);
  expect(addWall.label(plan, { wall })).toBe('add C Second');
});

test('add-wall refuses a letter or an id that a surface has already', () => {
  expect(addWall.apply(plan, { wall: { ...wall, letter: 'B' } })).toMatchObject({ path: 'ceilings[0].letter' });
  expect(addWall.apply(plan, { wall: { ...wall, id: 'wall' } })).toMatchObject({ path: 'walls[1].id' });
});
