import { expect, test } from 'vitest';
import { keepAlternative } from '../../../src/plan/commands/keep-alternative';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const wall = plan.walls[0]!;

test('keep-alternative keeps a build beside the plan and moves nothing', () => {
  const after = taken(keepAlternative.apply(plan, { id: 'wider', name: 'Wider', wall }));
  expect(after.alternatives).toEqual([{ id: 'wider', name: 'Wider', wall }]);
  expect(changedGroups(plan, after)).toEqual(['alternatives']);
});

test('keep-alternative refuses an id that is taken', () => {
  const once = taken(keepAlternative.apply(plan, { id: 'wider', name: 'Wider', wall }));
  expect(keepAlternative.apply(once, { id: 'wider', name: 'Other', wall })).toMatchObject({
    path: 'alternatives[1].id',
  });
});

test('keep-alternative says its name', () => {
  expect(keepAlternative.label(plan, { id: 'wider', name: 'Wider', wall })).toBe('keep Wider as an alternative');
});
