import type { Plan } from './plan';

/**
 * The next unused id of a kind: 'panel-7' where panel-6 is the highest that stands anywhere in the plan. Ids that are only
 * referred to count as well, so that what rests in the file never comes to mean something new. The same plan gives the same id.
 */
export function freshId(plan: Plan, stem: string): string {
  let highest = 0;
  const waiting: unknown[] = [plan];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next === 'string') highest = Math.max(highest, numberOf(next, stem));
    else if (typeof next === 'object' && next !== null) {
      for (const [key, value] of Object.entries(next)) if (!withoutIds.has(key) && value !== null) waiting.push(value);
    }
  }
  return `${stem}-${highest + 1}`;
}

/** Long lists in which no id stands. */
const withoutIds: ReadonlySet<string> = new Set(['existingWiring', 'ticks']);

/** 6 for 'panel-6' and the stem 'panel'; 0 for anything else. */
function numberOf(text: string, stem: string): number {
  if (!text.startsWith(`${stem}-`)) return 0;
  const digits = text.slice(stem.length + 1);
  return /^[1-9]\d{0,8}$/.test(digits) ? Number(digits) : 0;
}
