import { expect, test } from 'vitest';
import { takeItems } from '../../../src/plan/commands/take-items';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('flat');
const { catalogue } = samplePlan('ring-feet');

test('take-items takes what is asked for and what it leans on', () => {
  const after = taken(takeItems.apply(plan, { catalogue, itemIds: ['alder-25', 'wharf-400'] }));
  const ids = Object.values(after.catalogue).flatMap((items) => items.map(({ id }) => id));
  expect(ids).toEqual(expect.arrayContaining(['alder-25', 'wharf-400', 'weir-24', 'sluice-8']));
  expect(ids).not.toContain('alder-51');
  expect(ids).not.toContain('culvert-16-2');
  expect(changedGroups(plan, after)).toEqual(['catalogue']);
});

test('take-items of what is there already is no change', () => {
  expect(taken(takeItems.apply(plan, { catalogue, itemIds: ['rush-39'] })).catalogue.panels).toEqual(
    plan.catalogue.panels,
  );
  expect(taken(takeItems.apply(plan, { catalogue: plan.catalogue, itemIds: ['osier-25'] }))).toBe(plan);
});

test('take-items refuses what the other catalogue does not have', () => {
  expect(takeItems.apply(plan, { catalogue, itemIds: ['alder-25', 'gone'] })).toEqual({
    refused: `the other catalogue has no 'gone'`,
    path: 'catalogue',
  });
});

test('take-items says the name of one item, or how many', () => {
  expect(takeItems.label(plan, { catalogue, itemIds: ['mill-4'] })).toBe(
    'take Mill render node (invented) into the catalogue',
  );
  expect(takeItems.label(plan, { catalogue, itemIds: ['a', 'b'] })).toBe('take 2 items into the catalogue');
});
