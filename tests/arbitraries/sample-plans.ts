import { readFileSync } from 'node:fs';
import { parsePlan } from '../../src/plan/parse-plan';
import type { Plan } from '../../src/plan/plan';

/** A sample of fixtures/plans, read as a file is opened. */
export function samplePlan(name: 'horseshoe' | 'ring-feet' | 'flat'): Plan {
  const parsed = parsePlan(readFileSync(new URL(`../../fixtures/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!('plan' in parsed)) throw new Error(parsed.sentence);
  return parsed.plan;
}

export const sampleNames = ['horseshoe', 'ring-feet', 'flat'] as const;
