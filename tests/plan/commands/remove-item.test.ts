import { expect, test } from 'vitest';
import { removeItem } from '../../../src/plan/commands/remove-item';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('horseshoe');

test('remove-item takes it out with its stock and spares', () => {
  const stated = {
    ...plan,
    wish: { ...plan.wish, stock: [...plan.wish.stock, { itemId: 'reed-28', owned: 3, obtainable: null }] },
    materials: { ...plan.materials, byItem: [{ itemId: 'reed-28', share: 0.1, least: 2 }] },
  };
  const after = taken(removeItem.apply(stated, { itemId: 'reed-28' }));
  expect(after.catalogue.panels.map(({ id }) => id)).toEqual([
    'sedge-19',
    'sedge-26',
    'osier-25',
    'rush-39',
    'rush-48',
  ]);
  expect(after.wish.stock).toEqual(plan.wish.stock);
  expect(after.materials.byItem).toEqual([]);
  expect(changedGroups(plan, taken(removeItem.apply(plan, { itemId: 'reed-28' })))).toEqual(['catalogue']);
});

test('remove-item takes a processor off the lists of panels', () => {
  const after = taken(removeItem.apply(plan, { itemId: 'brook-4' }));
  const pairs = after.catalogue.panels.flatMap(({ data }) => data.drivenBy.map(({ processorId }) => processorId));
  expect(pairs).not.toContain('brook-4');
  expect(pairs).toContain('weir-24');
});

test('remove-item refuses while something needs the item, and says what', () => {
  expect(removeItem.apply(plan, { itemId: 'sedge-26' })).toEqual({
    refused: 'Sedge 2.6 (invented) is in use',
    path: 'walls[0].bands[0].panelId',
  });
  expect(removeItem.apply(plan, { itemId: 'sluice-8' })).toMatchObject({
    path: 'catalogue.processors[0].outlets.breakoutId',
  });
  expect(removeItem.apply(plan, { itemId: 'gone' })).toMatchObject({ refused: `the catalogue has no 'gone'` });
});

test('remove-item says the name', () => {
  expect(removeItem.label(plan, { itemId: 'mill-4' })).toBe('remove Mill render node (invented) from the catalogue');
});
