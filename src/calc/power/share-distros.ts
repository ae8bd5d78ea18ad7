import type { Distro } from '../../plan/distro';
import { balanceLegs } from './balance-legs';
import type { BranchCurrent } from './branch-current';
import { legCurrents } from './leg-currents';
import type { LegScheme } from './leg-scheme';
import { fitsWithin } from './panels-within';

/** What one distro may feed. */
export interface DistroLimits {
  readonly circuits: number;
  /** Amperes a leg: the usable share of its rating. */
  readonly legA: number;
}

export function distroLimits(distro: Distro, usableShare: number): DistroLimits {
  return { circuits: distro.circuits, legA: distro.legA * usableShare };
}

function carries(loads: readonly BranchCurrent[], scheme: LegScheme, limits: DistroLimits): boolean {
  const { byBranch } = balanceLegs(
    loads,
    scheme.branches.map(() => 0),
  );
  return legCurrents(scheme, byBranch).legA.every((a) => fitsWithin(a, limits.legA));
}

/** First circuits of the distros, each filled as far as it goes in order; a distro takes one circuit even where that is too much. */
function fillInOrder(loads: readonly BranchCurrent[], scheme: LegScheme, limits: DistroLimits): number[] {
  const starts: number[] = [];
  for (let from = 0; from < loads.length; ) {
    starts.push(from);
    let fits = 1;
    let tooMany = Math.min(limits.circuits, loads.length - from) + 1;
    if (carries(loads.slice(from, from + tooMany - 1), scheme, limits)) fits = tooMany - 1;
    while (tooMany - fits > 1) {
      const middle = Math.floor((fits + tooMany) / 2);
      if (carries(loads.slice(from, from + middle), scheme, limits)) fits = middle;
      else tooMany = middle;
    }
    from += fits;
  }
  return starts;
}

/** The fewest distros, with as even a number of circuits as that allows. */
function fillEvenly(loads: readonly BranchCurrent[], scheme: LegScheme, limits: DistroLimits): number[] {
  let starts = fillInOrder(loads, scheme, limits);
  let tooFew = Math.ceil(loads.length / Math.max(1, starts.length)) - 1;
  let enough = limits.circuits;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    const other = fillInOrder(loads, scheme, { ...limits, circuits: middle });
    if (other.length <= starts.length) {
      starts = other;
      enough = middle;
    } else tooFew = middle;
  }
  return starts;
}

/**
 * Gives neighbouring circuits to as few distros as can carry them. Returns the first circuit of each distro. `surfaceStarts` are
 * the first circuits of the surfaces: each surface keeps distros of its own where that takes no more of them.
 */
export function shareDistros(
  loads: readonly BranchCurrent[],
  surfaceStarts: readonly number[],
  scheme: LegScheme,
  limits: DistroLimits,
): number[] {
  const together = fillEvenly(loads, scheme, limits);
  const apart = surfaceStarts.flatMap((from, i) =>
    fillEvenly(loads.slice(from, surfaceStarts[i + 1] ?? loads.length), scheme, limits).map((start) => from + start),
  );
  return apart.length <= together.length ? apart : together;
}
