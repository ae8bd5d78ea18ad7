import { expect, test } from 'vitest';
import { duplicateItem } from '../../../src/plan/commands/duplicate-item';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('flat');

test('duplicate-item puts a copy behind the item', () => {
  const after = taken(duplicateItem.apply(plan, { itemId: 'sedge-26', newId: 'panel-1', name: 'Sedge, dimmer' }));
  expect(after.catalogue.panels.map(({ id }) => id)).toEqual(['sedge-26', 'panel-1', 'osier-25', 'rush-39']);
  expect(after.catalogue.panels[1]).toEqual({ ...plan.catalogue.panels[0], id: 'panel-1', name: 'Sedge, dimmer' });
  expect(changedGroups(plan, after)).toEqual(['catalogue']);
});

test('duplicate-item lets the copy of a processor drive the same panels', () => {
  const after = taken(duplicateItem.apply(plan, { itemId: 'brook-4', newId: 'processor-1', name: 'Brook B' }));
  for (const { data } of after.catalogue.panels) {
    const pairs = data.drivenBy.map(({ processorId }) => processorId);
    expect(pairs.includes('processor-1')).toBe(pairs.includes('brook-4'));
  }
});

test('duplicate-item refuses a taken id and an item that is not there', () => {
  expect(duplicateItem.apply(plan, { itemId: 'mill-4', newId: 'osier-25', name: '' })).toHaveProperty('refused');
  expect(duplicateItem.apply(plan, { itemId: 'gone', newId: 'x', name: '' })).toEqual({
    refused: `the catalogue has no 'gone'`,
    path: 'catalogue',
  });
});

test('duplicate-item says the name', () => {
  expect(duplicateItem.label(plan, { itemId: 'mill-4', newId: 'x', name: '' })).toBe(
    'duplicate Mill render node (invented)',
  );
});
