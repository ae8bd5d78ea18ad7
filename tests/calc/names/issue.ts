import type { ComparedPlan } from '../../../src/calc/compare/compare-plans';
import { followedPlan } from '../../../src/calc/compare/followed-plan';
import type { Evaluator } from '../../../src/calc/evaluate';
import { namesOfEvaluation } from '../../../src/calc/names/names-of-evaluation';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';

/** The plan after a revision of it was issued. */
export function issue(plan: Plan, { evaluate }: Evaluator, name = `R${plan.revisions.length + 1}`): Plan {
  const names = namesOfEvaluation(evaluate(plan), plan.walls, plan.names);
  const outcome = applyCommand(plan, {
    name: 'issue-revision',
    args: { name, issuedOn: '2026-11-25', note: '', names },
  });
  if ('refused' in outcome) throw new Error(outcome.refused);
  return outcome.plan;
}

/** The plan with one column before the first of a wall. */
export function widenLeft(plan: Plan, place = 0): Plan {
  const walls = plan.walls.map((wall, i) => {
    const first = { ...wall.path[0]!, id: 'more-on-the-left', columns: 1, mixed: null, jointBeforeDeg: 0 };
    return i === place ? { ...wall, path: [first, ...wall.path] } : wall;
  });
  return { ...plan, walls };
}

/** What follows from a plan, with the places by which its panels are followed. */
export function followed(plan: Plan, { evaluate }: Evaluator): ComparedPlan {
  return followedPlan(plan, evaluate(plan));
}

/** Names by what they stand for: panels in their order by their places in the document. */
export function chainsByContent({ runs, power, anchors }: ComparedPlan) {
  const contentOf = (order: Uint32Array, { start, count }: { readonly start: number; readonly count: number }) =>
    Array.from(order.subarray(start, start + count), (panel) => anchors![panel]).join(', ');
  const signal = runs.results;
  return {
    ports: new Map(signal.runs.map((run) => [contentOf(signal.order, run), run] as const)),
    circuits: new Map(power.results.circuits.map((each) => [contentOf(power.results.order, each), each] as const)),
  };
}
