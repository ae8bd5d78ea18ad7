import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue, widenLeft } from './issue';

const evaluator = createEvaluator();
const checks = (plan: Plan) => evaluator.evaluate(plan).checks;
const stops = (plan: Plan) => checks(plan).flatMap(({ id, severity }) => (severity === 'stop' ? [id] : []));
const issued = issue(samplePlan('horseshoe'), evaluator);

/** A wall one column wider: new runs keep off held ports on breakouts of their own. A stage without its ceiling: names rest. */
const plans = { wide: widenLeft(issued), open: { ...issued, ceilings: [] } };

test.each([
  ['wide', 'runs.held-breakouts'],
  ['open', 'runs.held-resting'],
  ['open', 'power.held-resting'],
] as const)('on a %s stage the repair of %s clears it and stops nothing', (name, id) => {
  const plan = plans[name];
  const check = checks(plan).find((each) => each.id === id);
  const outcome = applyCommand(plan, check!.fix!.command);
  expect(outcome).toHaveProperty('plan');
  const { plan: repaired } = outcome as { plan: Plan };
  expect(checks(repaired).filter((each) => each.id === id)).toEqual([]);
  expect(stops(repaired).filter((each) => !stops(plan).includes(each))).toEqual([]);
});
