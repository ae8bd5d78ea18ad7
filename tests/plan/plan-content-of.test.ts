import { expect, test } from 'vitest';
import { planContent } from '../../src/plan/plan-content';
import { planContentOf } from '../../src/plan/plan-content-of';
import { samplePlan } from './sample-plan';

test('planContentOf leaves out what stands beside the content, and nothing else', () => {
  const plan = samplePlan('version-3');
  const { format, version, id, revisions, log, ...content } = plan;
  expect(planContentOf(plan)).toEqual(content);
  expect(planContent.safeParse(planContentOf(plan)).success).toBe(true);
});
