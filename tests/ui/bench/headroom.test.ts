import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Evaluation } from '../../../src/calc/evaluation';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { parsePlan } from '../../../src/plan/parse-plan';
import type { Plan } from '../../../src/plan/plan';
import { findHeadroom, type HeadroomCell, worstCell } from '../../../src/ui/bench/headroom';

const options = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;

function sample(): { readonly plan: Plan; readonly evaluation: Evaluation } {
  const parsed = parsePlan(readFileSync('fixtures/plans/flat.json', 'utf8'));
  if ('refused' in parsed) throw new Error(parsed.sentence);
  return { plan: parsed.plan, evaluation: createEvaluator().evaluate(parsed.plan) };
}

const { plan, evaluation } = sample();
const withWish = (wish: Partial<Plan['wish']>): Plan => ({ ...plan, wish: { ...plan.wish, ...wish } });
const cell = (of: Plan, key: string, from: Evaluation = evaluation): HeadroomCell =>
  findHeadroom(of, from, options).find((one) => one.key === key)!;

test('what is left is the limit less what is used, with both beside it', () => {
  const heat = { ...evaluation.heat, checks: [], results: { ...evaluation.heat.results, fullWhiteW: 214_000 } };
  expect(cell(withWish({ coolingW: 260_000 }), 'cooling', { ...evaluation, heat, checks: [] })).toMatchObject({
    left: '46 kW left',
    detail: '214 of 260 kW',
    status: 'pass',
  });
});

test('two amounts of money keep their millions, each its own', () => {
  const materials = { ...evaluation.materials, results: { ...evaluation.materials.results, priceToGet: 36_050_000 } };
  const { detail } = cell(withWish({ budget: 3_400_000 }), 'budget', { ...evaluation, materials });
  expect(detail).toBe('€36.1m of €3.40m');
});

test('what is exceeded says by how much and stops where no check judges it', () => {
  const heat = { ...evaluation.heat, results: { ...evaluation.heat.results, fullWhiteW: 300_000 } };
  expect(cell(withWish({ coolingW: 260_000 }), 'cooling', { ...evaluation, heat, checks: [] })).toMatchObject({
    left: '40 kW over',
    status: 'stop',
  });
});

test('a limit nobody stated reads so and is never passed', () => {
  expect(cell(withWish({ coolingW: null }), 'cooling')).toMatchObject({ left: 'not stated', status: 'quiet' });
  expect(cell(withWish({ budget: null }), 'budget')).toMatchObject({ left: 'not stated', status: 'quiet' });
  expect(cell(withWish({ stock: [] }), 'processors')).toMatchObject({ left: 'not stated', status: 'quiet' });
});

test('a cell takes its mark from the checks that judge it, also where some is left', () => {
  const judged = evaluation.heat.checks.map((check) => ({ ...check, severity: 'watch' as const }));
  const marked = { ...evaluation, checks: judged };
  expect(judged.some((check) => check.id === 'heat.cooling')).toBe(true);
  expect(cell(withWish({ coolingW: 1e7 }), 'cooling', marked).status).toBe('watch');
  expect(cell(withWish({ coolingW: 1e7 }), 'budget', marked).status).not.toBe('watch');
});

test('the fullest port leaves what its share leaves', () => {
  const { fullestPortShare } = evaluation.headline;
  const percent = ((1 - fullestPortShare!) * 100).toFixed(1).replace(/\.0$/, '');
  expect(cell(plan, 'port').left).toBe(`${percent} % left`);
});

test('a plan without surfaces has cells that measure nothing, and no mark', () => {
  const blank = emptyPlan({ id: 'new', name: 'New plan', lengths: 'metric' });
  const cells = findHeadroom(blank, createEvaluator().evaluate(blank), options);
  expect(cells.filter(({ status, left }) => status !== 'quiet' || left !== '–')).toEqual([]);
  expect(cells.map(({ left, detail }) => `${left} ${detail}`).join()).not.toMatch(/NaN|Infinity/);
});

test('worstCell takes a stop before a watch, and of two alike the one with less left', () => {
  const make = (key: string, status: HeadroomCell['status'], leftShare: number) =>
    ({ key, status, leftShare }) as HeadroomCell;
  const cells = [
    make('a', 'pass', 0.01),
    make('b', 'watch', 0.3),
    make('c', 'watch', 0.1),
    make('d', 'quiet', Infinity),
  ];
  expect(worstCell(cells)?.key).toBe('c');
  expect(worstCell([...cells, make('e', 'stop', 0.9)])?.key).toBe('e');
  expect(worstCell([])).toBeNull();
});
