import type { Check } from '../chapter';
import { checkHeldNames } from '../names/check-held-names';
import type { LocatedChain } from '../names/locate-names';
import { statesOfPorts } from '../names/states-of-ports';
import type { RunsResults } from './run-result';

/** Names of ports that are held, those that runs return to among them. */
export function checkHeldPorts(held: readonly LocatedChain[], results: Pick<RunsResults, 'runs' | 'runOf'>): Check[] {
  const kind = {
    chapter: 'runs',
    kind: 'port',
    things: 'ports',
    lost: 'the processors that drive their panels now have no such ports',
  } as const;
  return checkHeldNames(kind, statesOfPorts(held, results));
}
