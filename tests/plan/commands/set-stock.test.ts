import { expect, test } from 'vitest';
import { setStock } from '../../../src/plan/commands/set-stock';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');
const entry = (after: typeof plan, itemId: string) => after.wish.stock.find((one) => one.itemId === itemId);

test('set-stock changes what is said and leaves the rest of the entry', () => {
  const after = taken(setStock.apply(plan, { itemId: 'sedge-26', owned: 900 }));
  expect(entry(after, 'sedge-26')).toEqual({ itemId: 'sedge-26', owned: 900, obtainable: 240 });
  expect(changedGroups(plan, after)).toEqual(['wish']);
  expect(after.wish.hall).toBe(plan.wish.hall);
});

test('set-stock adds an entry, and drops one that states nothing', () => {
  const added = taken(setStock.apply(plan, { itemId: 'brook-4', obtainable: 3 }));
  expect(entry(added, 'brook-4')).toEqual({ itemId: 'brook-4', owned: null, obtainable: 3 });
  expect(entry(taken(setStock.apply(added, { itemId: 'brook-4', obtainable: null })), 'brook-4')).toBeUndefined();
  expect(taken(setStock.apply(plan, { itemId: 'brook-4', owned: null }))).toBe(plan);
});

test('set-stock refuses what is no count', () => {
  expect(setStock.apply(plan, { itemId: 'brook-4', owned: -1 })).toMatchObject({ refused: 'at least 0' });
  expect(setStock.apply(plan, { itemId: 'brook-4', owned: 1.5 })).toMatchObject({
    refused: 'a whole number belongs here',
  });
});

test('set-stock says the name of the item', () => {
  expect(setStock.label(plan, { itemId: 'sedge-26' })).toBe('stock of Sedge 2.6 (invented)');
  expect(setStock.label(plan, { itemId: 'gone' })).toBe('stock of gone');
});
