import type { WallResult } from '../calc/walls/wall-result';
import { columnCorners } from './column-corners';
import { acrossMm, depthMm, type ElevationView } from './elevation-view';

/** What shows of one column between two places across the picture: everything above `overMm`. */
export interface ElevationSlice {
  readonly wall: WallResult;
  readonly column: number;
  readonly fromMm: number;
  readonly toMm: number;
  /** Top of what stands before it; minus infinity where nothing does. */
  readonly overMm: number;
}

interface Standing {
  readonly wall: WallResult;
  readonly column: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly depthMm: number;
  readonly topMm: number;
}

/** Narrower slices are the rounding of corners that meet. */
const leastMm = 0.5;

/**
 * The walls in a level view, cut across the picture wherever a column begins or ends: at each place the nearest column, and of
 * those behind it what is higher. From the left; of one place the nearest first.
 */
export function elevationSlices(walls: readonly WallResult[], view: ElevationView): readonly ElevationSlice[] {
  const standing = walls.flatMap((wall) => Array.from({ length: wall.columns }, (_, c) => place(wall, c + 1, view)));
  const cuts = Float64Array.from(standing.flatMap(({ fromMm, toMm }) => [fromMm, toMm])).sort();
  const begins = standing.toSorted((a, b) => a.fromMm - b.fromMm);
  const slices: ElevationSlice[] = [];
  /** Where the last slice of each column lies in the list. */
  const lastOf = new Map<Standing, number>();
  let open: Standing[] = [];
  let next = 0;
  let from = cuts[0] ?? 0;
  for (const cut of cuts) {
    if (cut - from < leastMm) continue;
    const middle = (from + cut) / 2;
    while (next < begins.length && begins[next]!.fromMm < middle) open.push(begins[next++]!);
    open = open.filter(({ toMm }) => toMm > middle).sort((a, b) => a.depthMm - b.depthMm);
    let overMm = Number.NEGATIVE_INFINITY;
    for (const one of open) {
      if (one.topMm <= overMm) continue;
      const last = lastOf.get(one) ?? -1;
      const before = slices[last];
      if (before?.toMm === from && before.overMm === overMm) slices[last] = { ...before, toMm: cut };
      else lastOf.set(one, slices.push({ wall: one.wall, column: one.column, fromMm: from, toMm: cut, overMm }) - 1);
      overMm = one.topMm;
    }
    from = cut;
  }
  return slices;
}

function place(wall: WallResult, column: number, view: ElevationView): Standing {
  const { frontLeft, frontRight, backLeft, backRight } = columnCorners(wall, column);
  const corners = [frontLeft, frontRight, backLeft, backRight];
  const across = corners.map((corner) => acrossMm(view, corner));
  return {
    wall,
    column,
    fromMm: Math.min(...across),
    toMm: Math.max(...across),
    depthMm: corners.reduce((sum, corner) => sum + depthMm(view, corner), 0) / corners.length,
    topMm: wall.baseMm + wall.heightMm,
  };
}
