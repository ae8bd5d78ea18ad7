import type { ParsedPlan } from '../../plan/parse-plan';
import { isCopyKey } from '../state/copy-key';
import type { KeptEntry, PlanShelf } from './plan-shelf';

/** Key of the kept document that holds the plan with this id: an own one before a copy, of several the newest; null where none does. */
export async function findByPlanId(
  shelf: Pick<PlanShelf, 'list' | 'read'>,
  parse: (text: string) => ParsedPlan,
  planId: string,
): Promise<string | null> {
  const entries = await shelf.list();
  const own = entries.filter(({ key }) => !isCopyKey(key));
  const copies = entries.filter(({ key }) => isCopyKey(key));
  for (const entry of [...own, ...copies]) if ((await planIdOf(entry)) === planId) return entry.key;
  return null;

  /** What was kept before entries had it is opened to look. */
  async function planIdOf(entry: KeptEntry): Promise<string | null> {
    if (entry.planId !== undefined) return entry.planId;
    const text = await shelf.read(entry.key);
    const parsed = text === null ? null : parse(text);
    return parsed !== null && 'plan' in parsed ? parsed.plan.id : null;
  }
}
