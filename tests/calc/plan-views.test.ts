import { expect, test } from 'vitest';
import { planViews } from '../../src/calc/plan-views';
import { samplePlan } from '../plan/sample-plan';

test('planViews give the list of before where an edit changes nothing of what a chapter takes', () => {
  const views = planViews();
  const { panels } = samplePlan('horseshoe').catalogue;
  const before = [views.shapes(panels), views.masses(panels)];
  const dearer = panels.map((panel) => ({ ...panel, purchase: { ...panel.purchase, price: 1 } }));
  expect([views.shapes(dearer), views.masses(dearer)]).toEqual(before);
  expect(views.shapes(dearer)).toBe(before[0]);
  const heavier = dearer.map((panel) => ({ ...panel, massKg: panel.massKg + 1 }));
  expect(views.shapes(heavier)).toBe(before[0]);
  expect(views.masses(heavier)).not.toBe(before[1]);
});
