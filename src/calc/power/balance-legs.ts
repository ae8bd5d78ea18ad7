import { addBranches, type BranchCurrent, branchAmps, noBranch } from './branch-current';

/** Whole microamperes, so that rounding does not decide which leg a circuit goes to. */
const microamperes = (amps: number) => Math.round(amps * 1e6);

export interface BalancedLegs {
  /** Index of the branch that each circuit sits on, in the order given. */
  readonly branchOf: Uint8Array;
  /** Load of each branch from these circuits. */
  readonly byBranch: readonly BranchCurrent[];
}

/**
 * Spreads circuits over the branches of a supply so that the worst is small: the largest circuit first, each to the branch with
 * least on it; between equals to the one with least on it so far on the whole stage (`beforeA`, one entry a branch), then the
 * first. Source: Graham, Bounds on multiprocessing timing anomalies, SIAM J. Appl. Math. 17 (1969), from memory: the worst of m
 * branches is at most 4/3 - 1/(3 m) of the least possible.
 */
export function balanceLegs(circuits: readonly BranchCurrent[], beforeA: readonly number[]): BalancedLegs {
  const loads = circuits.map((circuit) => microamperes(branchAmps(circuit)));
  const largestFirst = loads.map((_, i) => i).sort((a, b) => loads[b]! - loads[a]! || a - b);
  const before = beforeA.map(microamperes);
  const load = beforeA.map(() => 0);
  const branchOf = new Uint8Array(circuits.length);
  const byBranch = beforeA.map(() => noBranch);
  for (const i of largestFirst) {
    let least = 0;
    for (let k = 1; k < load.length; k++) {
      const here = load[k]! - load[least]!;
      if (here < 0 || (here === 0 && before[k]! < before[least]!)) least = k;
    }
    branchOf[i] = least;
    load[least]! += loads[i]!;
    byBranch[least] = addBranches(byBranch[least]!, circuits[i]!);
  }
  return { branchOf, byBranch };
}
