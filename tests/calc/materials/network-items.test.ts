import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { networkItems } from '../../../src/calc/materials/network-items';
import { sampleNames, samplePlan } from '../../arbitraries/sample-plans';

test('networkItems names each part with its count, without price and mass', () => {
  const counts = { devices: 9, references: 1, splitters: 2, syncCables: 11, switches: 3, networkCables: 12 };
  const items = networkItems(counts);
  expect(items.map(({ itemId, needed }) => [itemId, needed])).toEqual([
    ['sync-reference', 1],
    ['sync-splitter', 2],
    ['sync-cable', 11],
    ['network-switch', 3],
    ['network-cable', 12],
  ]);
  for (const item of items) expect(item).toMatchObject({ group: 'network', priceEach: null, massKgEach: 0 });
});

test.each(sampleNames)('the bill of %s counts the parts that its schedules of sync and addresses list', (name) => {
  const { materials, nodes } = createEvaluator().evaluate(samplePlan(name));
  const { sync, addresses } = nodes.results;
  const needed = (id: string) => materials.results.lines.find(({ itemId }) => itemId === id)?.needed;
  expect(needed('sync-cable')).toBe(sync.length);
  expect(needed('sync-splitter')).toBe(
    new Set(sync.flatMap(({ from, to }) => [from, to]).filter((each) => each.startsWith('Splitter'))).size,
  );
  expect(needed('network-switch')).toBe(new Set(addresses.map((device) => device.switch)).size);
});
