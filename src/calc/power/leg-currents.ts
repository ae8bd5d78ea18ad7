import { type BranchCurrent, noBranch } from './branch-current';
import type { Branch, Leg, LegScheme } from './leg-scheme';
import { addPhasors, magnitude, noCurrent, type Phasor, phasor, subtractPhasors, turnPhasor } from './phasor';

export interface LegCurrents {
  /** Amperes on each leg of the scheme, in its order. */
  readonly legA: readonly number[];
  /** Amperes on the neutral at mains frequency. */
  readonly neutralA: number;
}

/** A neutral below this share of the legs is the rounding of equal legs. */
const roundingShare = 1e-9;

const starts = (branch: Branch, leg: Leg) => branch === leg || branch.startsWith(`${leg}-`);
const ends = (branch: Branch, leg: Leg) => branch.endsWith(`-${leg}`);

/**
 * Leg and neutral currents of branch loads, summed as phasors. `byBranch` has one entry a branch of the scheme;
 * `onEachLeg` is a further load from every leg to neutral, the same on each.
 * Leg to neutral: neutral = |Ia + Ib + Ic|. Leg to leg: Ia = Iab - Ica. Source: any circuits textbook.
 */
export function legCurrents(
  scheme: LegScheme,
  byBranch: readonly BranchCurrent[],
  onEachLeg: BranchCurrent = noBranch,
): LegCurrents {
  const at = (load: BranchCurrent, angleDeg: number): Phasor =>
    turnPhasor({ re: load.activeA, im: -load.reactiveA }, phasor(1, angleDeg));
  const branches = scheme.branches.map((_, i) => at(byBranch[i]!, scheme.branchAngleDeg[i]!));
  let neutral = noCurrent;
  const legA = scheme.legs.map((leg, k) => {
    let current = at(onEachLeg, scheme.legAngleDeg[k]!);
    scheme.branches.forEach((branch, i) => {
      if (starts(branch, leg)) current = addPhasors(current, branches[i]!);
      if (ends(branch, leg)) current = subtractPhasors(current, branches[i]!);
    });
    neutral = addPhasors(neutral, current);
    return magnitude(current);
  });
  const neutralA = magnitude(neutral);
  const isRounding = neutralA <= roundingShare * legA.reduce((sum, a) => sum + a, 0);
  return { legA, neutralA: isRounding ? 0 : neutralA };
}
