import { emptyPlan } from '../plan/empty-plan';
import { type ParsedPlan, parsePlan } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { complainOfRefusal } from './complain-of-refusal';
import { readText } from './read-text';
import type { Terminal } from './terminal';

/**
 * The plan of a file; or, where it holds a wish alone, a new plan with the starter catalogue that wishes so, what the wish
 * leaves out being as nobody stated it. Null, with reason and path on standard error, where it is neither.
 */
export function readWish(file: string, terminal: Terminal): Plan | null {
  const text = readText(file, terminal);
  if (text === null) return null;
  const asPlan = parsePlan(text);
  const parsed = 'refused' in asPlan && asPlan.refused === 'not-a-plan' ? (parseWish(text) ?? asPlan) : asPlan;
  if ('plan' in parsed) return parsed.plan;
  complainOfRefusal(file, parsed, terminal);
  return null;
}

/** Reads a text that is known to be JSON; null where it is no wish either. */
function parseWish(text: string): ParsedPlan | null {
  const value: unknown = JSON.parse(text.replace(/^\ufeff/, ''));
  const plan = emptyPlan({ id: 'wish', name: 'Wish', lengths: 'metric' });
  if (!isRecord(value) || !Object.keys(value).some((key) => Object.hasOwn(plan.wish, key))) return null;
  return parsePlan(JSON.stringify({ ...plan, wish: completed(plan.wish, value) }));
}

/** `given` over `usual`, record by record. What is no record is taken as it is given, for the schema to judge. */
function completed(usual: Readonly<Record<string, unknown>>, given: Readonly<Record<string, unknown>>): object {
  const both = Object.entries(given).map(([key, value]) => {
    const beside = Object.hasOwn(usual, key) ? usual[key] : undefined;
    return [key, isRecord(beside) && isRecord(value) ? completed(beside, value) : value] as const;
  });
  return { ...usual, ...Object.fromEntries(both) };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
