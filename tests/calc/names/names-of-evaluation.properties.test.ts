import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comparePlans } from '../../../src/calc/compare/compare-plans';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Evaluation } from '../../../src/calc/evaluation';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import { edit } from '../../arbitraries/edit';
import { wiredPlan } from '../../arbitraries/wired-plan';
import { followed, issue } from './issue';

const evaluator = createEvaluator();
const { evaluate } = evaluator;
/** Plans that were never issued, so that every name that is held comes from the test. */
const plans = wiredPlan.map((plan): Plan => ({ ...plan, names: null, revisions: [] }));

const edited = (plan: Plan, edits: readonly Parameters<typeof applyCommand>[1][]) =>
  edits.reduce((now, command) => {
    const outcome = applyCommand(now, command);
    return 'plan' in outcome ? outcome.plan : now;
  }, plan);

function expectOwnNames({ runs, power, zones }: Evaluation): void {
  const ports = runs.results.runs.flatMap(({ port, returnPort }) =>
    returnPort === null ? [port] : [port, returnPort],
  );
  const circuits = power.results.circuits.map(({ name }) => name);
  const processors = zones.results.zones.map(({ processor }) => `${processor}`);
  for (const names of [ports, circuits, processors]) expect(new Set(names).size).toBe(names.length);
}

test('issuing a plan and changing nothing gives the same names and an empty comparison', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const issued = issue(plan, evaluator);
      expect(comparePlans(followed(plan, evaluator), followed(issued, evaluator))).toEqual([]);
      expect(issue(issued, evaluator).names).toEqual(issued.names);
    }),
    { numRuns: 12 },
  );
});

test('no two ports, circuits or processors ever have one name, whatever is edited after one revision and another', () => {
  fc.assert(
    fc.property(plans, fc.array(edit, { maxLength: 4 }), fc.array(edit, { maxLength: 4 }), (plan, first, then) => {
      const once = edited(issue(plan, evaluator), first);
      expectOwnNames(evaluate(once));
      expectOwnNames(evaluate(edited(issue(once, evaluator), then)));
    }),
    { numRuns: 15 },
  );
});

test('undoing what was edited since gives the names that were issued', () => {
  fc.assert(
    fc.property(plans, fc.array(edit, { minLength: 1, maxLength: 4 }), (plan, edits) => {
      const issued = issue(plan, evaluator);
      const before = evaluate(issued).runs.results.runs;
      evaluate(edited(issued, edits));
      expect(evaluate(issued).runs.results.runs).toEqual(before);
    }),
    { numRuns: 8 },
  );
});

test('comparing what was issued with what was edited since mirrors, panels followed by their places', () => {
  fc.assert(
    fc.property(plans, fc.array(edit, { minLength: 2, maxLength: 6 }), (plan, edits) => {
      const issued = issue(plan, evaluator);
      const [before, after] = [followed(issued, evaluator), followed(edited(issued, edits), evaluator)];
      const count = (kinds: readonly string[], changes: ReturnType<typeof comparePlans>) =>
        kinds.map((kind) => changes.filter((change) => change.kind === kind).length);
      const there = comparePlans(before, after);
      const back = comparePlans(after, before);
      expect(count(['removed', 'added', 'moved', 'renamed', 'changed'], back)).toEqual(
        count(['added', 'removed', 'moved', 'renamed', 'changed'], there),
      );
    }),
    { numRuns: 10 },
  );
});
