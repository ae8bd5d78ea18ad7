import { parsePlan } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { complainOfRefusal } from './complain-of-refusal';
import { readText } from './read-text';
import type { Terminal } from './terminal';

/** The plan of a file; null, with reason and path on standard error, where there is none. */
export function readPlan(file: string, terminal: Terminal): Plan | null {
  const text = readText(file, terminal);
  if (text === null) return null;
  const parsed = parsePlan(text);
  if ('plan' in parsed) return parsed.plan;
  complainOfRefusal(file, parsed, terminal);
  return null;
}
