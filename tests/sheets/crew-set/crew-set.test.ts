import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { crewSet } from '../../../src/sheets/crew-set/crew-set';
import { evaluated, options } from './sample-set';

test('crewSet of nothing is a cover', () => {
  const { plan, evaluation } = evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' }));
  expect(crewSet(plan, evaluation, options).map(({ id }) => id)).toEqual(['cover']);
});
