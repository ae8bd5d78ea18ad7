import { expect, test } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import {
  breakoutGearSteps,
  gearSteps,
  nodeGearSteps,
  otherProcessorSteps,
  panelGearSteps,
  processorGearSteps,
  signalGearSteps,
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
  expect(gearSteps(silent, evaluation, [{ id: panelId }], 'panels')).toEqual([]);
  expect(processorGearSteps(silent, evaluation)).toEqual([]);
  expect(breakoutGearSteps(silent, evaluation)).toEqual([]);
});

test('panelGearSteps write down how many can be had where nobody stated it', () => {
  const silent = { ...plan, wish: { ...plan.wish, stock: [{ itemId: panelId, owned: 62, obtainable: null }] } };
  const written = panelGearSteps(silent, evaluation).map(({ command }) =>
    command.name === 'set-fields' ? command.args.fields[0]!.value : null,
  );
  expect(written).toEqual([1, 2].map((obtainable) => [{ itemId: panelId, owned: 62, obtainable }]));
});

test('signalGearSteps get processors and breakouts in one step, and none where only one of them is short', () => {
  const ring = samplePlan('ring-feet');
  const { materials } = createEvaluator().evaluate(ring);
  // The sample needs 9 processors of three breakouts each at most, and 18 breakouts.
  const owning = (processors: number, breakouts: number) => ({
    ...ring,
    wish: {
      ...ring.wish,
      stock: [
        { itemId: 'weir-24', owned: processors, obtainable: null },
        { itemId: 'sluice-8', owned: breakouts, obtainable: 1 },
      ],
    },
  });
  const steps = (processors: number, breakouts: number) =>
    signalGearSteps(owning(processors, breakouts), { ...evaluation, materials });
  expect(steps(9, 3)).toEqual([]);
  expect(steps(7, 17)).toEqual([]);
  expect(steps(7, 10)).toHaveLength(1);
  expect(steps(7, 10)[0]).toMatchObject({
    from: { value: 18 },
    to: { value: 27 },
    choice: expect.stringMatching(/: 2 more; .*: 7 more$/),
  });
});

test('nodeGearSteps get the nodes that are short, and signalGearSteps get them with processors that are short too', () => {
  const { materials } = evaluation;
  const nodes = materials.results.lines.find(({ itemId }) => itemId === plan.signal.nodeId)!.needed;
  const owning = (processors: number) => ({
    ...plan,
    wish: {
      ...plan.wish,
      stock: [
        { itemId: plan.signal.processorId!, owned: processors, obtainable: 0 },
        { itemId: plan.signal.nodeId!, owned: 0, obtainable: null },
      ],
    },
  });
  expect(nodeGearSteps(owning(9), evaluation).map(({ to }) => to.value)).toEqual(
    Array.from({ length: nodes }, (_, i) => i + 1),
  );
  expect(signalGearSteps(owning(9), evaluation)).toEqual([]);
  expect(signalGearSteps(owning(0), evaluation)).toHaveLength(1);
});

test('otherProcessorSteps offer every processor that drives nothing now', () => {
  const used = new Set(evaluation.zones.results.zones.map(({ processorId }) => processorId));
  expect(otherProcessorSteps(plan, evaluation)).toHaveLength(
    plan.catalogue.processors.filter(({ id }) => !used.has(id)).length,
  );
});
