import { expect, test } from 'vitest';
import { addItem } from '../../../src/plan/commands/add-item';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('flat');
const item = { ...plan.catalogue.nodes[0]!, id: 'node-1', name: 'Loom' };

test('add-item adds it at the end of its list', () => {
  const after = taken(addItem.apply(plan, { list: 'nodes', item }));
  expect(after.catalogue.nodes).toEqual([...plan.catalogue.nodes, item]);
  expect(changedGroups(plan, after)).toEqual(['catalogue']);
  expect(addItem.label(plan, { list: 'nodes', item })).toBe('add Loom to the catalogue');
});

test('add-item refuses a taken id, an item of another kind, and a list that is none', () => {
  expect(addItem.apply(plan, { list: 'nodes', item: { ...item, id: 'osier-25' } })).toEqual({
    refused: `the catalogue has 'osier-25' already`,
    path: 'catalogue.nodes[1].id',
  });
  expect(addItem.apply(plan, { list: 'cables', item })).toMatchObject({ path: 'catalogue.cables[6].kind' });
  expect(addItem.apply(plan, { list: 'toString' as never, item })).toMatchObject({ path: 'catalogue' });
});
