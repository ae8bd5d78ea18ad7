import { findTwinSurface } from '../find-twin-surface';
import { judge } from '../judge';
import { type Plan, plan as planSchema } from '../plan';
import type { Outcome } from './command';
import { pathText } from './path-text';
import { withoutNegativeZero } from './without-negative-zero';

/**
 * The last step of every command: `next` where the schema accepts it, else why not and where.
 * Groups that `previous` shares with `next` were accepted before and are not read again.
 */
export function admit(previous: Plan, next: Plan): Outcome {
  if (next === previous) return { plan: previous };
  for (const key of Object.keys(planSchema.shape) as (keyof Plan)[]) {
    if (next[key] === previous[key]) continue;
    const judged = judge<unknown>(planSchema.shape[key], next[key], [key]);
    if ('reason' in judged) return { refused: judged.reason, path: judged.path };
  }
  if (next.walls !== previous.walls || next.ceilings !== previous.ceilings) {
    const twin = findTwinSurface(next);
    if (twin !== undefined) return { refused: twin.reason, path: pathText(twin.path) };
  }
  return { plan: withoutNegativeZero(next, previous) };
}
