import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { applyCommand, type Command } from '../../src/plan/commands';
import type { Plan } from '../../src/plan/plan';
import { edit } from '../arbitraries/edit';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';
import { smallPlan } from '../arbitraries/small-plan';
import { wiredPlan } from '../arbitraries/wired-plan';

const plans = fc.oneof({ weight: 1, arbitrary: smallPlan }, { weight: 3, arbitrary: wiredPlan });
const steps = fc.array(
  fc.oneof({ weight: 3, arbitrary: edit }, { weight: 2, arbitrary: fc.constant('undo' as const) }),
  {
    minLength: 1,
    maxLength: 8,
  },
);

/** The plans on the way, one after each step: an edit that is refused leaves the plan as it was. */
function walk(first: Plan, taken: readonly (Command | 'undo')[]): Plan[] {
  const history = [first];
  return taken.map((step) => {
    if (step === 'undo') {
      if (history.length > 1) history.pop();
    } else {
      const outcome = applyCommand(history.at(-1)!, step);
      if ('plan' in outcome) history.push(outcome.plan);
    }
    return history.at(-1)!;
  });
}

test('evaluate after any edits and undos is equal to evaluating afresh', () => {
  fc.assert(
    fc.property(plans, steps, (first, taken) => {
      const { evaluate } = createEvaluator();
      evaluate(first);
      const way = walk(first, taken);
      const found = way.map((plan) => evaluate(plan));
      const last = way.length - 1;
      expect(found[last]).toEqual(createEvaluator().evaluate(way[last]!));
      // What was found on the way was not written over by what came after.
      const half = way.length >> 1;
      expect(found[half]).toEqual(createEvaluator().evaluate(way[half]!));
    }),
    { numRuns: 40 },
  );
});

test('evaluate of a plan written to JSON and read again is equal, though none of its parts is the same', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const { evaluate } = createEvaluator();
      const found = evaluate(plan);
      expect(evaluate(structuredClone(plan))).toEqual(found);
    }),
    { numRuns: 30 },
  );
});

test.each(sampleNames)(
  'evaluate of the sample %s after an edit and its undo gives every chapter that was there',
  (name) => {
    const { evaluate } = createEvaluator();
    const plan = samplePlan(name);
    const before = evaluate(plan);
    const command: Command = {
      name: 'set-fields',
      args: { fields: [{ path: ['walls', 0, 'path', 0, 'columns'], value: 5 }] },
    };
    const outcome = applyCommand(plan, command);
    if (!('plan' in outcome)) throw new Error(outcome.refused);
    const between = evaluate(outcome.plan);
    const after = evaluate(plan);
    for (const chapter of [
      'walls',
      'ceilings',
      'picture',
      'ports',
      'zones',
      'runs',
      'nodes',
      'links',
      'power',
      'faults',
      'heat',
      'masses',
      'materials',
      'wish',
    ] as const) {
      expect(after[chapter]).toBe(before[chapter]);
      if (chapter !== 'ceilings') expect(between[chapter]).not.toBe(before[chapter]);
    }
  },
);
