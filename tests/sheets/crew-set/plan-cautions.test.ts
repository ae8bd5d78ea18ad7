import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import { planCautions } from '../../../src/sheets/crew-set/plan-cautions';
import { samplePlan } from '../../arbitraries/sample-plans';
import { evaluated } from './sample-set';

const names = (plan: Plan) => {
  const said = planCautions(plan, evaluated(plan).evaluation);
  return Object.entries(cautions).flatMap(([name, text]) => (said.includes(text) ? [name] : []));
};

test('planCautions of nothing says who decides, and no more', () => {
  expect(names(emptyPlan({ id: 'p', name: '', lengths: 'metric' }))).toEqual(['general']);
});

test('planCautions of a wall that stands on the floor below reach are those of electricity and stacked load', () => {
  const flat = samplePlan('flat');
  // 450 mm of base and the panels reach above an adult's 2.1 m; with a reach of 9 m nothing is high.
  expect(names(flat)).toEqual(['general', 'electricity', 'stackedLoad', 'height']);
  expect(names({ ...flat, signal: { ...flat.signal, reachMm: 9000 } })).toEqual([
    'general',
    'electricity',
    'stackedLoad',
  ]);
});

test('planCautions of a nearly closed ring under a ceiling that travels are all of them', () => {
  const plan = samplePlan('ring-feet');
  expect(names(plan)).toEqual(Object.keys(cautions));
  const still = plan.ceilings.map((ceiling) => ({
    ...ceiling,
    height: { ...ceiling.height, highestMm: ceiling.height.lowestMm },
  }));
  expect(names({ ...plan, ceilings: still })).not.toContain('movingParts');
});
