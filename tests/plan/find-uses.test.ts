import { expect, test } from 'vitest';
import { findUses } from '../../src/plan/find-uses';
import { samplePlan } from './sample-plan';

test('findUses names every field that needs an item', () => {
  const plan = samplePlan('version-2');
  expect(findUses(plan, 'reed-28')).toEqual(['walls[0].bands[0].panelId', 'alternatives[0].wall.bands[0].panelId']);
  expect(findUses(plan, 'rush-48')).toEqual([0, 1, 2].map((place) => `ceilings[${place}].panelId`));
  expect(findUses(plan, 'brook-4')).toEqual(['signal.bySurface[0].processorId']);
  expect(findUses(plan, 'weir-24')).toEqual(['signal.processorId']);
  expect(findUses(plan, 'sluice-8')).toEqual(['catalogue.processors[0].outlets.breakoutId']);
  expect(findUses(plan, 'mill-4')).toEqual(['signal.nodeId']);
  plan.power.distroId = 'quay-125';
  plan.signal.bySurface[0]!.nodeId = 'mill-4';
  expect(findUses(plan, 'quay-125')).toEqual(['power.distroId']);
  expect(findUses(plan, 'mill-4')).toEqual(['signal.nodeId', 'signal.bySurface[0].nodeId']);
});

test('findUses leaves out what can do without: stock, spares, drivers, cables of a kind', () => {
  const plan = samplePlan('version-2');
  plan.wish.stock.push({ itemId: 'home-run-20', owned: 4, obtainable: null });
  expect(findUses(plan, 'home-run-20')).toEqual([]);
});
