import { expect, test } from 'vitest';
import { applyCommand } from '../../src/plan/commands';
import { draftCeiling } from '../../src/plan/draft-ceiling';
import { samplePlan } from './sample-plan';

test('draftCeiling makes a ceiling that a plan takes, with a letter and an id of its own', () => {
  const plan = samplePlan('horseshoe');
  const ceiling = draftCeiling(plan, 'rush-39');
  expect(ceiling).toMatchObject({ id: 'ceiling-1', letter: 'C', panelId: 'rush-39' });
  expect(applyCommand(plan, { name: 'add-ceiling', args: { ceiling } })).toHaveProperty('plan');
});
