import { expect, test } from 'vitest';
import { admit } from '../../../src/plan/commands/admit';
import { samplePlan } from '../sample-plan';

const plan = samplePlan('horseshoe');

test('admit gives the next plan back where the schema takes it', () => {
  const next = { ...plan, name: 'Other' };
  expect(admit(plan, next)).toEqual({ plan: next });
  expect(admit(plan, plan)).toEqual({ plan });
});

test('admit says what is refused and where', () => {
  const masses = { ...plan.masses, columnsAFrame: 0 };
  expect(admit(plan, { ...plan, masses })).toEqual({ refused: 'at least 1', path: 'masses.columnsAFrame' });
  const ceilings = [{ ...plan.ceilings[0]!, letter: 'A' }];
  expect(admit(plan, { ...plan, ceilings })).toEqual({
    refused: `another surface has 'A' already`,
    path: 'ceilings[0].letter',
  });
});

test('admit does not read groups again that were there before', () => {
  const odd = { ...plan, masses: { ...plan.masses, columnsAFrame: 0 } };
  expect(admit(odd, { ...odd, name: 'Other' })).toHaveProperty('plan');
});

test('admit keeps -0 out of the document', () => {
  const [wall] = plan.walls;
  const next = { ...plan, walls: [{ ...wall!, place: { ...wall!.place, xMm: -0 } }] };
  const outcome = admit(plan, next) as { plan: typeof plan };
  expect(Object.is(outcome.plan.walls[0]!.place.xMm, 0)).toBe(true);
});
