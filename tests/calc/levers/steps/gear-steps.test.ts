import { expect, test } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import {
  breakoutGearSteps,
  gearSteps,
  otherProcessorSteps,
  panelGearSteps,
  processorGearSteps,
} from '../../../../src/calc/levers/steps/gear-steps';
import { samplePlan } from '../../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const panelId = plan.walls[0]!.bands[0]!.panelId;
const evaluation = createEvaluator().evaluate(plan);
const holding = (owned: number) => ({
  ...plan,
  wish: { ...plan.wish, stock: [{ itemId: panelId, owned, obtainable: 0 }] },
});

test('panelGearSteps add panels one by one up to what is short, each at its price', () => {
  const steps = panelGearSteps(holding(60), evaluation);
  const price = plan.catalogue.panels.find(({ id }) => id === panelId)!.purchase.price!;
  expect(steps.map(({ to, buys }) => [to.value, buys])).toEqual([1, 2, 3, 4].map((n) => [60 + n, n * price]));
});

test('gearSteps are none where nothing is short or nobody stated what there is', () => {
  expect(panelGearSteps(holding(64), evaluation)).toEqual([]);
  const silent = { ...plan, wish: { ...plan.wish, stock: [] } };
  expect(gearSteps(silent, evaluation, new Set([panelId]), 'panels')).toEqual([]);
  expect(processorGearSteps(silent, evaluation)).toEqual([]);
  expect(breakoutGearSteps(silent, evaluation)).toEqual([]);
});

test('otherProcessorSteps offer every processor that drives nothing now', () => {
  const used = new Set(evaluation.zones.results.zones.map(({ processorId }) => processorId));
  expect(otherProcessorSteps(plan, evaluation)).toHaveLength(
    plan.catalogue.processors.filter(({ id }) => !used.has(id)).length,
  );
});
