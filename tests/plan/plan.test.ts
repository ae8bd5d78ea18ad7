import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plan } from '../../src/plan/plan';
import { anyPlan } from '../arbitraries/plan';
import { samplePlan } from './sample-plan';

test('every plan that the arbitraries make is one that the schema accepts', () => {
  for (const size of ['small', 'any'] as const) {
    fc.assert(
      fc.property(anyPlan(size), (made) => {
        expect(plan.safeParse(made).error?.issues).toBeUndefined();
      }),
      { numRuns: 150 },
    );
  }
});

test('a surface that repeats a letter makes a plan invalid at that letter', () => {
  const made = samplePlan('horseshoe');
  made.ceilings[0]!.letter = 'A';
  expect(plan.safeParse(made).error!.issues).toMatchObject([{ path: ['ceilings', 0, 'letter'] }]);
});

test('a dangling id is no fault of the document', () => {
  const made = samplePlan('flat');
  made.walls[0]!.bands[0]!.panelId = 'gone';
  expect(plan.safeParse(made).success).toBe(true);
});
