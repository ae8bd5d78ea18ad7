import { expect, test } from 'vitest';
import { compareRevisions, panelsChangedSince } from '../../../src/calc/compare/compare-revisions';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue, widenLeft } from '../names/issue';

const evaluator = createEvaluator();
const { evaluate } = evaluator;
const first = issue(samplePlan('horseshoe'), evaluator, 'A');
const wide = issue(widenLeft(first), evaluator, 'B');
const idOf = (plan: Plan, name: string) => plan.revisions.find((revision) => revision.name === name)!.id;
const [a, b] = [idOf(wide, 'A'), idOf(wide, 'B')];

test('compareRevisions of a revision with itself, and of the last one with what was not changed since, is empty', () => {
  expect(compareRevisions(wide, { from: a, to: a }, evaluate)).toEqual([]);
  expect(compareRevisions(wide, { from: b, to: null }, evaluate)).toEqual([]);
});

test('compareRevisions with a column more adds its panels and calls the others by their new names', () => {
  const panels = compareRevisions(wide, { from: a, to: b }, evaluate)!.filter(({ what }) => what === 'panel');
  // The wall of the horseshoe has 14 rows; every column moves one further.
  expect(panels.filter(({ kind }) => kind === 'added').map(({ name }) => name)).toEqual(
    Array.from({ length: 14 }, (_, row) => `A C1 R${row + 1}`),
  );
  expect(panels.find(({ name }) => name === 'A C2 R1')).toMatchObject({ kind: 'renamed', before: ['A C1 R1'] });
  expect(new Set(panels.map(({ kind }) => kind))).toEqual(new Set(['added', 'renamed']));
});

test('compareRevisions the other way round removes what was added', () => {
  const there = compareRevisions(wide, { from: a, to: null }, evaluate)!;
  const back = compareRevisions(wide, { from: null, to: a }, evaluate)!;
  const count = (changes: typeof there, kind: string) => changes.filter((change) => change.kind === kind).length;
  expect(count(back, 'removed')).toBe(count(there, 'added'));
  expect(count(back, 'added')).toBe(count(there, 'removed'));
  expect(back).toHaveLength(there.length);
});

test('compareRevisions and panelsChangedSince know no revision that the plan does not have', () => {
  expect(compareRevisions(wide, { from: 'gone', to: null }, evaluate)).toBeNull();
  expect(panelsChangedSince(wide, 'gone', evaluate)).toBeNull();
});

test('panelsChangedSince marks the new column, and not the far end of the stage', () => {
  const changed = panelsChangedSince(wide, a, evaluate)!;
  expect(changed).toHaveLength(evaluate(wide).surfaces.total);
  expect(changed.slice(0, 14)).toEqual(new Uint8Array(14).fill(1));
  expect(changed.filter((mark) => mark === 1).length).toBeLessThan(changed.length / 3);
  expect(panelsChangedSince(wide, b, evaluate)!.every((mark) => mark === 0)).toBe(true);
});
