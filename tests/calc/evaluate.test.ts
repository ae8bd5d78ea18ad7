import { expect, test } from 'vitest';
import type { ChapterId } from '../../src/calc/chapter';
import { createEvaluator } from '../../src/calc/evaluate';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';

function badNumbers(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array).every(Number.isFinite) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => badNumbers(part, `${path}.${key}`));
}

test.each(sampleNames)('evaluate of the sample %s holds no NaN and no infinity, and a check id stands once', (name) => {
  const evaluation = createEvaluator().evaluate(samplePlan(name));
  expect(badNumbers(evaluation, name)).toEqual([]);
  const ids = evaluation.checks.map(({ id }) => id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

test('evaluate of a plan twice gives the same chapters, and afresh equal ones', () => {
  const { evaluate } = createEvaluator();
  const plan = samplePlan('flat');
  const first = evaluate(plan);
  expect(evaluate(plan).runs).toBe(first.runs);
  expect(createEvaluator().evaluate(plan)).toEqual(first);
});

test('evaluate after a price edit moves no geometry, no wiring and no circuit', () => {
  const computed: ChapterId[] = [];
  const { evaluate } = createEvaluator((chapter) => computed.push(chapter));
  const plan = samplePlan('flat');
  evaluate(plan);
  computed.length = 0;
  const panels = plan.catalogue.panels.map((panel) => ({ ...panel, purchase: { ...panel.purchase, price: 1 } }));
  evaluate({ ...plan, catalogue: { ...plan.catalogue, panels } });
  expect(computed.sort()).toEqual(['materials', 'panels', 'wish']);
});

test('evaluate puts every panel on exactly one run and one circuit', () => {
  const { surfaces, runs, power } = createEvaluator().evaluate(samplePlan('horseshoe'));
  expect([...runs.results.order].sort((a, b) => a - b)).toEqual(Array.from({ length: surfaces.total }, (_, i) => i));
  expect([...power.results.order].sort((a, b) => a - b)).toEqual(Array.from({ length: surfaces.total }, (_, i) => i));
});
