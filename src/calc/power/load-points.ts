import type { Power } from '../../plan/power';
import { addBranches, type BranchCurrent, noBranch } from './branch-current';
import { type BranchLoads, hangDistros } from './hang-distros';
import { legLoads } from './leg-loads';
import type { LegScheme } from './leg-scheme';
import type { PointLoad } from './power-result';

/**
 * Distros, by their numbers, hung on the service points and what each point then carries. Signal equipment is many small things: it is spread over
 * the points by their amperes. None where no way was found, without a point and without a distro.
 */
export function loadPoints(
  { servicePoints, circuit }: Pick<Power, 'servicePoints' | 'circuit'>,
  scheme: LegScheme,
  numbers: readonly number[],
  byDistro: readonly BranchLoads[],
  signal: BranchCurrent,
): readonly PointLoad[] {
  if (servicePoints.length === 0 || byDistro.length === 0) return [];
  const allA = servicePoints.reduce((sum, { legA }) => sum + legA, 0);
  const limits = servicePoints.map(({ legA }) => ({
    legA: legA * circuit.usableShare,
    onEachLeg: { activeA: (signal.activeA * legA) / allA, reactiveA: (signal.reactiveA * legA) / allA },
  }));
  const pointOf = hangDistros(byDistro, scheme, limits);
  if (pointOf === null) return [];
  return servicePoints.map(({ id, name }, p) => {
    const on = pointOf.flatMap((point, d) => (point === p ? [d] : []));
    const byBranch = scheme.branches.map((_, b) => on.reduce((sum, d) => addBranches(sum, byDistro[d]![b]!), noBranch));
    const { legA, onEachLeg } = limits[p]!;
    return {
      pointId: id,
      name,
      distros: on.map((d) => numbers[d]!),
      legs: legLoads(scheme, byBranch, legA, onEachLeg),
    };
  });
}
