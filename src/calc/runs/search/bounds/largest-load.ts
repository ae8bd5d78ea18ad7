import { greatestCommonDivisor } from '../largest-divisor';
import type { Region } from '../region';

/** Sums tried at most: beyond, the usable pixels themselves serve. */
const SUMS_TRIED = 2_000_000;

/**
 * Most pixels that panels of these sizes can add up to without exceeding `usablePixels`: ten panels of 46,656 fill a port of
 * 480,000 no further than 466,560. At most the sum of all panels.
 */
export function largestLoad(region: Region): number {
  const { usablePixels } = region.limits;
  const counts = new Map<number, number>();
  let total = 0;
  let unit = 0;
  for (const pixels of region.pixels) {
    counts.set(pixels, (counts.get(pixels) ?? 0) + 1);
    total += pixels;
    unit = greatestCommonDivisor(unit, pixels);
  }
  if (total <= usablePixels) return total;
  const most = Math.floor(usablePixels / unit);
  if (counts.size === 1) return most * unit;
  if (most * counts.size > SUMS_TRIED) return most * unit;
  // left[s]: panels of the present size still unused when the sum s is reached as cheaply as can be; -1: not reached.
  const left = new Int32Array(most + 1).fill(-1);
  left[0] = 0;
  for (const [pixels, count] of counts) {
    const step = pixels / unit;
    for (let sum = 0; sum <= most; sum++) {
      if (left[sum]! >= 0) left[sum] = count;
      else if (sum >= step && left[sum - step]! > 0) left[sum] = left[sum - step]! - 1;
    }
  }
  for (let sum = most; sum > 0; sum--) if (left[sum]! >= 0) return sum * unit;
  return 0;
}
