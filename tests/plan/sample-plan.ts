import { readFileSync } from 'node:fs';
import { parsePlan } from '../../src/plan/parse-plan';
import type { Plan } from '../../src/plan/plan';

/** The text of a file of fixtures/plans. */
export function sampleText(name: string): string {
  return readFileSync(new URL(`../../fixtures/plans/${name}.json`, import.meta.url), 'utf8');
}

/** The plan in it, fresh for each caller. */
export function samplePlan(name: 'horseshoe' | 'ring-feet' | 'flat' | 'version-1' | 'version-2' | 'version-3'): Plan {
  const parsed = parsePlan(sampleText(name));
  if ('refused' in parsed) throw new Error(parsed.sentence);
  return parsed.plan;
}
