import { parsePlan } from '../../plan/parse-plan';
import type { Plan } from '../../plan/plan';

/** The invented sample that a first visit opens; parsed like any other file. */
export async function loadSample(): Promise<Plan> {
  const { default: text } = await import('../../../fixtures/plans/horseshoe.json?raw');
  const parsed = parsePlan(text);
  if ('refused' in parsed) throw new Error(`the sample is broken: ${parsed.sentence}`);
  return parsed.plan;
}
