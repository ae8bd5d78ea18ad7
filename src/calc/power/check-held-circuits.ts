import type { Check } from '../chapter';
import { checkHeldNames } from '../names/check-held-names';
import type { LocatedChain } from '../names/locate-names';
import { statesOfCircuits } from '../names/states-of-circuits';
import type { PowerResults } from './power-result';

/** Names of circuits that are held. */
export function checkHeldCircuits(
  held: readonly LocatedChain[],
  results: Pick<PowerResults, 'circuits' | 'circuitOf'>,
): Check[] {
  const kind = {
    chapter: 'power',
    kind: 'circuit',
    things: 'circuits',
    lost: 'the distros that feed their panels now have no such circuits',
  } as const;
  return checkHeldNames(kind, statesOfCircuits(held, results));
}
