import { expect, test } from 'vitest';
import { changesSinceIssue } from '../../../src/calc/compare/changes-since-issue';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue, widenLeft } from '../names/issue';

const evaluator = createEvaluator();
const { evaluate } = evaluator;
const since = (plan: Plan) => changesSinceIssue(plan, evaluate(plan), evaluate);
const never = samplePlan('flat');
const first = issue(never, evaluator, 'A');
const wide = widenLeft(first);
const second = issue(wide, evaluator, 'B');

test('changesSinceIssue of a plan that was never issued is null', () => {
  expect(since(never)).toBeNull();
});

test('changesSinceIssue of a plan as it was issued has no changes where there is no revision before', () => {
  const found = since(first)!;
  expect([found.revision.name, found.changes]).toEqual(['A', []]);
  expect([...new Set(found.panels)]).toEqual([0]);
  expect(found.panels).toHaveLength(evaluate(first).surfaces.total);
});

test('changesSinceIssue of an edited plan are those since it was issued', () => {
  const found = since(wide)!;
  expect(found.revision.name).toBe('A');
  expect(found.changes.some(({ kind, what }) => kind === 'added' && what === 'panel')).toBe(true);
  expect(found.panels.some((changed) => changed === 1)).toBe(true);
});

test('changesSinceIssue right after issuing are those since the revision before', () => {
  const found = since(second)!;
  expect(found.revision.name).toBe('A');
  const added = ({ changes }: typeof found) => changes.filter(({ kind, what }) => kind === 'added' && what === 'panel');
  expect(added(found)).toEqual(added(since(wide)!));
});
