import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { stopsOf } from '../../../src/calc/levers/stops-of';
import { samplePlan } from '../../arbitraries/sample-plans';

test('stopsOf panels are stops of panel counts, of signal those of its chapters and equipment', () => {
  const plan = samplePlan('flat');
  const panelId = plan.walls[0]!.bands[0]!.panelId;
  const short = { ...plan, wish: { ...plan.wish, stock: [{ itemId: panelId, owned: 1, obtainable: 0 }] } };
  const evaluation = createEvaluator().evaluate(short);
  expect(stopsOf('panels', evaluation, short).map(({ chapter }) => chapter)).toEqual(['wish']);
  expect(stopsOf('signal', evaluation, short)).toEqual([]);
});

test('stopsOf signal has render nodes that are short', () => {
  const plan = samplePlan('flat');
  const short = { ...plan, wish: { ...plan.wish, stock: [{ itemId: plan.signal.nodeId!, owned: 0, obtainable: 0 }] } };
  const evaluation = createEvaluator().evaluate(short);
  expect(stopsOf('signal', evaluation, short).map(({ id }) => id)).toEqual([`wish.stock.${plan.signal.nodeId}`]);
  expect(stopsOf('panels', evaluation, short)).toEqual([]);
});

test('stopsOf counts what is owned alone as what there is, where nobody stated how many more can be had', () => {
  const plan = samplePlan('flat');
  const panelId = plan.walls[0]!.bands[0]!.panelId;
  const owning = (owned: number) => ({
    ...plan,
    wish: { ...plan.wish, stock: [{ itemId: panelId, owned, obtainable: null }] },
  });
  const { evaluate } = createEvaluator();
  expect(stopsOf('panels', evaluate(owning(63)), owning(63))).toHaveLength(1);
  expect(stopsOf('panels', evaluate(owning(64)), owning(64))).toEqual([]);
});
