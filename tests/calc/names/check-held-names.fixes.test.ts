import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import { anchor } from '../../arbitraries/plan-fields';
import { samplePlan } from '../../arbitraries/sample-plans';
import { wiredPlan } from '../../arbitraries/wired-plan';
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

test('every repair of held names clears its check, whatever names are held', () => {
  const name = fc.constantFrom('1A-01', '1A-02', '1-01', '2-03', '2A-01', '9A-01', 'D1-1', 'D1-2', 'D2-1');
  const chain = fc.record({ name, first: anchor, last: anchor });
  const names = fc.record({
    processors: fc.array(fc.record({ number: fc.integer({ min: 1, max: 4 }), at: anchor }), { maxLength: 3 }),
    ports: fc.array(chain, { maxLength: 6 }),
    circuits: fc.array(chain, { maxLength: 6 }),
  });
  let tried = 0;
  fc.assert(
    fc.property(wiredPlan, names, (any, held) => {
      const plan = { ...any, names: held, revisions: [] };
      for (const { id, fix } of checks(plan).filter((each) => /\.held-/.test(each.id) && each.fix !== undefined)) {
        const { plan: repaired } = applyCommand(plan, fix!.command) as { plan: Plan };
        expect(checks(repaired).filter((each) => each.id === id)).toEqual([]);
        expect(stops(repaired).filter((each) => !stops(plan).includes(each))).toEqual([]);
        tried += 1;
      }
    }),
    { numRuns: 12 },
  );
  expect(tried).toBeGreaterThan(2);
});
