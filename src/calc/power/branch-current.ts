/**
 * Current of one branch split by its own voltage: the part in step with it, which carries the power, and the part that lags
 * a quarter period behind. Lagging power factors throughout.
 */
export interface BranchCurrent {
  readonly activeA: number;
  readonly reactiveA: number;
}

export const noBranch: BranchCurrent = { activeA: 0, reactiveA: 0 };

/** Current of a load of `watts` at `volts` and a power factor above 0: W / V, and W / V x tan(acos pf). */
export function branchCurrent(watts: number, volts: number, powerFactor: number): BranchCurrent {
  const activeA = watts / volts;
  return { activeA, reactiveA: (activeA * Math.sqrt(Math.max(0, 1 - powerFactor ** 2))) / powerFactor };
}

export function addBranches(a: BranchCurrent, b: BranchCurrent): BranchCurrent {
  return { activeA: a.activeA + b.activeA, reactiveA: a.reactiveA + b.reactiveA };
}

/** Amperes that an ammeter reads on the branch. */
export function branchAmps(branch: BranchCurrent): number {
  return Math.hypot(branch.activeA, branch.reactiveA);
}
