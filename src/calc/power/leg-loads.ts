import type { BranchCurrent } from './branch-current';
import { legCurrents } from './leg-currents';
import type { LegScheme } from './leg-scheme';
import type { LegLoad } from './power-result';

/** Every leg of a supply and its neutral under branch loads, one entry a branch of the scheme; the neutral has no stated limit. */
export function legLoads(
  scheme: LegScheme,
  byBranch: readonly BranchCurrent[],
  limitA: number | null,
  onEachLeg: BranchCurrent,
): readonly LegLoad[] {
  const { legA, neutralA } = legCurrents(scheme, byBranch, onEachLeg);
  const legs: LegLoad[] = scheme.legs.map((leg, k) => ({ leg, currentA: legA[k]!, limitA }));
  return [...legs, { leg: 'N', currentA: neutralA, limitA: null }];
}
