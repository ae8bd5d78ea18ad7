import { expect } from 'vitest';
import type { Outcome } from '../../../src/plan/commands/command';
import { type Plan, plan as planSchema } from '../../../src/plan/plan';

/** The plan that a command gave, after making sure that the schema takes it. */
export function taken(outcome: Outcome): Plan {
  if ('refused' in outcome) throw new Error(`${outcome.path ?? ''}: ${outcome.refused}`);
  expect(planSchema.safeParse(outcome.plan).error?.issues).toBeUndefined();
  return outcome.plan;
}

/** Groups of the plan that are not the same object any more. */
export function changedGroups(before: Plan, after: Plan): string[] {
  return (Object.keys(before) as (keyof Plan)[]).filter((key) => before[key] !== after[key]);
}
