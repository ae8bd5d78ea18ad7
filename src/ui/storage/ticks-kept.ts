import type { Tick } from '../../plan/build-log';
import { mergeTicks } from '../../plan/merge-ticks';
import type { ParsedPlan } from '../../plan/parse-plan';
import type { PlanShelf } from './plan-shelf';

/** Every tick that this browser keeps for a plan, in whichever document of it. */
export async function ticksKept(
  shelf: Pick<PlanShelf, 'list' | 'read'>,
  parse: (text: string) => ParsedPlan,
  planId: string,
): Promise<readonly Tick[]> {
  let ticks: readonly Tick[] = [];
  for (const entry of await shelf.list()) {
    // What was kept before entries had an id is opened to look.
    if (entry.planId !== undefined && entry.planId !== planId) continue;
    const text = await shelf.read(entry.key);
    const parsed = text === null ? null : parse(text);
    if (parsed && 'plan' in parsed && parsed.plan.id === planId) ticks = mergeTicks(ticks, parsed.plan.log.ticks);
  }
  return ticks;
}
