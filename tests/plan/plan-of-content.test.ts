import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planContentOf } from '../../src/plan/plan-content-of';
import { planOfContent } from '../../src/plan/plan-of-content';
import { anyPlan } from '../arbitraries/plan';

test('planOfContent gives a plan back from its own content, and keeps id, revisions and log with that of another', () => {
  fc.assert(
    fc.property(anyPlan(), anyPlan(), (plan, other) => {
      expect(planOfContent(plan, planContentOf(plan))).toEqual(plan);
      const { id, revisions, log } = plan;
      expect(planOfContent(plan, planContentOf(other))).toEqual({ ...other, id, revisions, log });
    }),
    { numRuns: 20 },
  );
});
