import { expect, test } from 'vitest';
import { clearHandChange } from '../../../src/plan/commands/clear-hand-change';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('version-2');

test('clear-hand-change takes out those named and leaves the rest', () => {
  const after = taken(clearHandChange.apply(plan, { ids: ['change-2', 'change-6'] }));
  expect(after.handChanges.map(({ id }) => id)).toEqual(['change-1', 'change-3', 'change-4', 'change-5']);
  expect(after.handChanges[0]).toBe(plan.handChanges[0]);
  expect(changedGroups(plan, after)).toEqual(['handChanges']);
});

test('clear-hand-change of none is no change, of one that is not there is refused', () => {
  expect(taken(clearHandChange.apply(plan, { ids: [] }))).toBe(plan);
  expect(clearHandChange.apply(plan, { ids: ['change-1', 'gone'] })).toEqual({
    refused: `there is no change by hand 'gone'`,
    path: 'handChanges',
  });
});

test('clear-hand-change says how many', () => {
  expect(clearHandChange.label(plan, { ids: ['change-1'] })).toBe('clear a change by hand');
  expect(clearHandChange.label(plan, { ids: ['change-1', 'change-2'] })).toBe('clear 2 changes by hand');
});
