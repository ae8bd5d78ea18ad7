import type { BenchState } from './bench-state';
import { isCopyKey } from './copy-key';

const followsRefusal = 'This plan is being changed in another tab. Change it there, or take a copy.';
const sharedRefusal = 'This is a read-only copy of a plan that was shared. Make it yours to change it.';

/** Commands that log the work instead of planning it: a copy takes them. */
const logs: ReadonlySet<string> = new Set(['put-ticks']);

/** Why the open document takes no such command, in a sentence; null where it takes it. */
export function whyRefused(
  { follows, documentKey }: Pick<BenchState, 'follows' | 'documentKey'>,
  command: string,
): string | null {
  if (follows) return followsRefusal;
  return isCopyKey(documentKey) && !logs.has(command) ? sharedRefusal : null;
}
