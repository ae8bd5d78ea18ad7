import type { Power } from '../../plan/power';
import { type BranchCurrent, branchCurrent } from './branch-current';

/** Power factor of processors, breakouts and nodes: supplies with correction. Common practice, from memory. */
export const signalPowerFactor = 0.95;

/** Signal equipment as an even load from every leg to neutral, at the lowest voltage of the supply's range. */
export function signalCurrent(supply: Power['supply'], watts: number): BranchCurrent {
  const legs = supply.kind === 'wye' ? 3 : 2;
  return branchCurrent(watts / legs, supply.legToNeutralV * supply.lowestShare, signalPowerFactor);
}
