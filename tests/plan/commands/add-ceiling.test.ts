import { expect, test } from 'vitest';
import { addCeiling } from '../../../src/plan/commands/add-ceiling';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const ceiling = { ...plan.ceilings[0]!, id: 'second', letter: 'C', name: 'Second' };

test('add-ceiling adds it behind the others', () => {
  const after = taken(addCeiling.apply(plan, { ceiling }));
  expect(after.ceilings).toEqual([...plan.ceilings, ceiling]);
  expect(changedGroups(plan, after)).toEqual(['ceilings']);
  expect(addCeiling.label(plan, { ceiling })).toBe('add C Second');
});

test('add-ceiling refuses what the schema does not take', () => {
  expect(addCeiling.apply(plan, { ceiling: { ...ceiling, letter: 'cc' } })).toEqual({
    refused: 'a surface has one letter, A to Z',
    path: 'ceilings[1].letter',
  });
});
