import type { Canvas } from './canvas';
import { linkById } from './link-by-id';
import type { LinkFit } from './link-result';
import { wholeCells } from './whole-cells';

/**
 * The least link among those that carry a canvas: one that sends no larger raster than its timing has (whole cells are
 * no larger), then the fewest cables,
 * then the least payload. Null where none carries it.
 */
export function leastLink(fits: readonly LinkFit[], timed: Canvas): LinkFit | null {
  let least: LinkFit | null = null;
  for (const fit of fits) {
    if (fit.fits && (least === null || isLess(fit, least, timed))) least = fit;
  }
  return least;
}

function isLess(a: LinkFit, b: LinkFit, timed: Canvas): boolean {
  const merits = (fit: LinkFit) => {
    const isLarger =
      fit.raster !== null && fit.raster.width * fit.raster.height > wholeCells(timed.width) * timed.height;
    return [isLarger ? 1 : 0, linkById(fit.linkId)!.cables, fit.carriesBps] as const;
  };
  const ours = merits(a);
  const theirs = merits(b);
  const first = ours.findIndex((merit, i) => merit !== theirs[i]);
  return first >= 0 && ours[first]! < theirs[first]!;
}
