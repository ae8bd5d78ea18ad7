import type fc from 'fast-check';
import type { Plan } from '../../src/plan/plan';
import { anyPlan } from './plan';

const leastMm = 250;

/**
 * Any plan of few panels, whatever else is odd about it: panels are at least a quarter of a metre wide and high, since a
 * ceiling of 10 m takes hundreds of thousands of smaller ones.
 */
export const smallPlan: fc.Arbitrary<Plan> = anyPlan('small').map((plan) => ({
  ...plan,
  catalogue: {
    ...plan.catalogue,
    panels: plan.catalogue.panels.map((panel) => ({
      ...panel,
      size: {
        ...panel.size,
        widthMm: Math.max(leastMm, panel.size.widthMm),
        heightMm: Math.max(leastMm, panel.size.heightMm),
      },
    })),
  },
}));
