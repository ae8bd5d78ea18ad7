import { emptyPlan } from '../plan/empty-plan';
import { parsePlan } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { complainOfRefusal } from './complain-of-refusal';
import { readText } from './read-text';
import type { Terminal } from './terminal';

/** Text of a plan: that of the file, or, where it holds a wish alone, of a new plan that wishes so. Text that is no JSON stays as it is. */
function asPlanText(text: string): string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return text;
  }
  const isWish =
    typeof value === 'object' && value !== null && Object.hasOwn(value, 'wall') && Object.hasOwn(value, 'hall');
  return isWish ? JSON.stringify({ ...emptyPlan({ id: 'wish', name: 'Wish', lengths: 'metric' }), wish: value }) : text;
}

/** The plan of a file, or a new plan with the starter catalogue for a wish alone; null, with the reason, where it is neither. */
export function readWish(file: string, terminal: Terminal): Plan | null {
  const text = readText(file, terminal);
  if (text === null) return null;
  const parsed = parsePlan(asPlanText(text));
  if ('plan' in parsed) return parsed.plan;
  complainOfRefusal(file, parsed, terminal);
  return null;
}
