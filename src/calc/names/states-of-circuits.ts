import type { PowerResults } from '../power/power-result';
import { type HeldStates, heldStates } from './held-states';
import type { LocatedChain } from './locate-names';

/** What became of the circuits whose names are held. */
export function statesOfCircuits(
  held: readonly LocatedChain[],
  { circuits, circuitOf }: Pick<PowerResults, 'circuits' | 'circuitOf'>,
): HeldStates {
  const nameAt = (panel: number) => circuits[circuitOf[panel]!]?.name ?? null;
  return heldStates(held, nameAt, new Set(circuits.map(({ name }) => name)));
}
