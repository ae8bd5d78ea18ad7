import type { Region } from '../region';
import { ceilDivide } from './ceil-divide';
import { largestLoad } from './largest-load';
import { leastBins } from './least-bins';
import { leastByWindows } from './least-by-windows';
import { mostInRectangle } from './most-in-rectangle';
import { mostLinks } from './most-links';
import { weightBefore } from './weight-before';

/** What a run can hold at most, in pixels of its panels and in panels. */
export interface MostOnARun {
  readonly pixels: number;
  readonly panels: number;
}

/** Panels must not overlap on the canvas: their pixels then fit the rectangle that encloses them. */
export function mostOnARun(region: Region): MostOnARun {
  const { limits, size } = region;
  const rectangle = limits.counting === 'rectangle' ? mostInRectangle(region) : null;
  const pixels = Math.min(largestLoad(region), rectangle?.pixels ?? Number.POSITIVE_INFINITY);
  let least = Number.POSITIVE_INFINITY;
  for (const each of region.pixels) least = Math.min(least, each);
  const panels = Math.min(
    size,
    Math.floor(limits.panelsMost),
    Math.floor(pixels / least),
    rectangle?.panels ?? Number.POSITIVE_INFINITY,
  );
  return { pixels, panels };
}

/**
 * A proved lower bound: no cover of the region whose runs all fit and that leaves at most `highMost` ends above reach has
 * fewer runs. Infinity for `highMost` leaves reach out of account.
 */
export function leastChains(region: Region, highMost: number, most = mostOnARun(region)): number {
  if (region.size === 0) return 0;
  const isReachFree = highMost === Number.POSITIVE_INFINITY || !region.outOfReach.includes(1);
  const least = Math.max(
    1,
    leastBins(region.pixels, most.pixels),
    leastByPanels(region, most.panels),
    isReachFree ? 0 : leastByReach(region, highMost, region.pixels, most.pixels),
    isReachFree ? 0 : leastByWindows(region, highMost, most.panels),
    isReachFree ? 0 : leastByReach(region, highMost, new Uint8Array(region.size).fill(1), most.panels),
  );
  const links = mostLinks(region, region.size - least);
  return links === null ? least : Math.max(least, region.size - links);
}

/**
 * Neighbours differ in colour as on a chessboard, so a run holds as many cells of one as of the other, or one more: with
 * d more cells of one colour at least d runs are of odd length, and these are one short of an even most.
 */
function leastByPanels(region: Region, most: number): number {
  let difference = 0;
  for (let cell = 0; cell < region.size; cell++) {
    difference += (region.column[cell]! + region.row[cell]!) % 2 === 0 ? 1 : -1;
  }
  const odd = Math.abs(difference);
  return Math.max(odd, ceilDivide(most % 2 === 0 ? region.size + odd : region.size, most));
}

/**
 * A run that comes from an entry in reach has gathered some weight before it touches what lies deeper: so much less is left
 * for the deep panels, from either end where both ends are in reach.
 */
function leastByReach(region: Region, highMost: number, weight: ArrayLike<number>, most: number): number {
  const before = weightBefore(region, weight);
  const sides = region.limits.lastObeysReach === true ? 2 : 1;
  const cells = Array.from(before.keys()).sort((a, b) =>
    before[a]! < before[b]! ? 1 : before[a]! > before[b]! ? -1 : 0,
  );
  let least = 0;
  let deep = 0;
  cells.forEach((cell, i) => {
    deep += weight[cell]!;
    const depth = before[cell]!;
    const next = cells[i + 1];
    if (depth === 0 || depth === Number.POSITIVE_INFINITY || (next !== undefined && before[next] === depth)) return;
    const room = most - sides * depth;
    // A run that does not come from reach spares all its approaches.
    if (room > 0) least = Math.max(least, ceilDivide(Math.max(0, deep - highMost * sides * depth), room));
  });
  return least;
}
