import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { findLevers } from '../../../src/calc/levers/find-levers';
import type { LeverAnswer, Topic } from '../../../src/calc/levers/lever';
import { leverDefinitions } from '../../../src/calc/levers/lever-definitions';
import { stopsOf } from '../../../src/calc/levers/stops-of';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';

const { evaluate } = createEvaluator();

function answerTo(plan: Plan, topic: Topic): LeverAnswer {
  const search = findLevers(plan, topic, evaluate);
  let turn = search.next();
  while (!turn.done) turn = search.next();
  return turn.value;
}

function owning(plan: Plan, itemId: string, owned: number): Plan {
  const stock = [...plan.wish.stock.filter((entry) => entry.itemId !== itemId), { itemId, owned, obtainable: 0 }];
  return { ...plan, wish: { ...plan.wish, stock } };
}

const flat = samplePlan('flat');
const panelId = flat.walls[0]!.bands[0]!.panelId;

test('findLevers of a plan that fits has nothing to change', () => {
  expect(answerTo(flat, 'signal')).toMatchObject({ stops: [], found: [], short: [] });
});

test.each([
  ['panels', owning(flat, panelId, 50)],
  ['signal', owning(flat, flat.signal.processorId!, 0)],
] as const)('findLevers for %s: every lever found makes it fit, and one step less does not', (topic, plan) => {
  const answer = answerTo(plan, topic);
  expect(answer.stops.length).toBeGreaterThan(0);
  expect(answer.found.length).toBeGreaterThan(0);
  const before = evaluate(plan);
  for (const { id, step } of answer.found) {
    const steps = leverDefinitions.find((definition) => definition.id === id)!.steps(plan, before);
    const at = steps.findIndex(({ command }) => JSON.stringify(command) === JSON.stringify(step.command));
    const stopsAt = (i: number) => {
      const outcome = applyCommand(plan, steps[i]!.command);
      return 'refused' in outcome ? ['refused'] : stopsOf(topic, evaluate(outcome.plan), outcome.plan);
    };
    expect(stopsAt(at)).toEqual([]);
    if (at > 0) expect(stopsAt(at - 1)).not.toEqual([]);
  }
});

test('findLevers for 14 panels short: fourteen more, or two columns fewer of eight', () => {
  // The sample has 8 columns of 8: 64 panels. With 50 there, 14 are short; a column holds 8, so two go: 48.
  const { found } = answerTo(owning(flat, panelId, 50), 'panels');
  expect(found.find(({ id }) => id === 'panels')!.step.to.value).toBe(64);
  expect(found.find(({ id }) => id === 'columns')!.step.to.value).toBe(6);
});
