import { addBranches, type BranchCurrent, noBranch } from './branch-current';
import { legCurrents } from './leg-currents';
import type { LegScheme } from './leg-scheme';
import { fitsWithin } from './panels-within';

/** Loads of the branches of a supply, one entry a branch of the scheme. */
export type BranchLoads = readonly BranchCurrent[];

/** A service point: what a leg of it carries for hours, and what hangs on every leg of it beside distros. */
export interface PointLimit {
  readonly legA: number;
  readonly onEachLeg: BranchCurrent;
}

/** Tries of the search that follows where distros in order do not fit; bounded so that any plan is evaluated soon. */
const mostTries = 5_000;
/** Halvings of the share that all points are filled to: to a thousandth of it. */
const halvings = 10;

const together = (a: BranchLoads, b: BranchLoads): BranchLoads => a.map((load, i) => addBranches(load, b[i]!));
const worstLegA = (scheme: LegScheme, load: BranchLoads, { onEachLeg }: PointLimit) =>
  Math.max(...legCurrents(scheme, load, onEachLeg).legA);

/** Fills one point after the other, in order, each up to a share of what it carries; null where distros are left over. */
function fillInOrder(
  distros: readonly BranchLoads[],
  scheme: LegScheme,
  points: readonly PointLimit[],
  share: number,
): readonly number[] | null {
  const pointOf: number[] = [];
  points.forEach((point, p) => {
    let load: BranchLoads = scheme.branches.map(() => noBranch);
    for (let next = distros[pointOf.length]; next !== undefined; next = distros[pointOf.length]) {
      load = together(load, next);
      if (!fitsWithin(worstLegA(scheme, load, point), point.legA * share)) break;
      pointOf.push(p);
    }
  });
  return pointOf.length === distros.length ? pointOf : null;
}

/** The largest distro first, each on the first point that has room for it, going back where one is left over. */
function search(
  distros: readonly BranchLoads[],
  scheme: LegScheme,
  points: readonly PointLimit[],
): readonly number[] | null {
  const alone = points.map((point) => ({ ...point, onEachLeg: noBranch }));
  const sizes = distros.map((load) => worstLegA(scheme, load, alone[0]!));
  const largestFirst = sizes.map((_, d) => d).sort((a, b) => sizes[b]! - sizes[a]! || a - b);
  const loads: BranchLoads[] = points.map(() => scheme.branches.map(() => noBranch));
  const pointOf = distros.map(() => -1);
  let tries = 0;
  const place = (n: number): boolean => {
    const d = largestFirst[n];
    if (d === undefined) return true;
    for (let p = 0; p < points.length && tries < mostTries; p++) {
      tries += 1;
      const before = loads[p]!;
      const after = together(before, distros[d]!);
      if (!fitsWithin(worstLegA(scheme, after, points[p]!), points[p]!.legA)) continue;
      loads[p] = after;
      pointOf[d] = p;
      if (place(n + 1)) return true;
      loads[p] = before;
    }
    return false;
  };
  return place(0) ? pointOf : null;
}

/**
 * Which service point each distro hangs on, whole: neighbours on one point, all points used to as even a share as that order
 * allows; where the order does not fit, any way that does. Null where no way was found.
 */
export function hangDistros(
  distros: readonly BranchLoads[],
  scheme: LegScheme,
  points: readonly PointLimit[],
): readonly number[] | null {
  let hung = fillInOrder(distros, scheme, points, 1);
  if (hung === null) return points.length < 2 ? null : search(distros, scheme, points);
  let tooLow = 0;
  let enough = 1;
  for (let i = 0; i < halvings; i++) {
    const share = (tooLow + enough) / 2;
    const other = fillInOrder(distros, scheme, points, share);
    if (other === null) tooLow = share;
    else {
      hung = other;
      enough = share;
    }
  }
  return hung;
}
