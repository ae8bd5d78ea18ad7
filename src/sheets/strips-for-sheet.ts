import type { StripLayout } from './unrolled-grid';

/** Pixels (of screen or paper) for the texts above a strip and for the home runs with their tags below it. */
const abovePx = 36;
const belowPx = 46;
/** Cuts are moved to where they hurt least, so the widest strip is somewhat wider than the mean. */
const unevenness = 1.06;
/** One more strip must gain this much, so that a surface is not cut up for nothing. */
const leastGain = 1.05;

/**
 * Number of strips that lets a surface be drawn largest in a window of so many pixels, with room for its lettering. The
 * room is rounded up in steps of a tenth: a window dragged wider asks for a new drawing now and then, not at every pixel.
 */
export function stripsForSheet(
  columns: number,
  columnWidthMm: number,
  heightMm: number,
  widthPx: number,
  heightPx: number,
): StripLayout {
  let count = 1;
  let scale = 0;
  for (let strips = 1; strips <= Math.min(columns, 40); strips++) {
    const across = Math.min(columns, Math.ceil(columns / strips) * (strips === 1 ? 1 : unevenness)) * columnWidthMm;
    const down = heightPx / strips - abovePx - belowPx;
    const here = Math.min(widthPx / across, Math.max(down, 1) / heightMm);
    if (here <= scale * leastGain) continue;
    count = strips;
    scale = here;
  }
  const step = 1.1 ** Math.ceil(Math.log(1 / scale) / Math.log(1.1));
  return { count, aboveMm: abovePx * step, belowMm: belowPx * step };
}
