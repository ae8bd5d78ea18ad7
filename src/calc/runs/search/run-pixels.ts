import type { RunLimits, WiringGrid } from '../wiring-grid';

/** Pixels that the panels `order[from .. to - 1]` count for on one port. */
export function runPixels(grid: WiringGrid, limits: RunLimits, order: Int32Array, from: number, to: number): number {
  const { pixelLeft, pixelTop, pixelWidth, pixelHeight } = grid;
  if (limits.counting === 'panels') {
    let sum = 0;
    for (let at = from; at < to; at++) sum += pixelWidth[order[at]!]! * pixelHeight[order[at]!]!;
    return sum;
  }
  if (to === from) return 0;
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = 0;
  let bottom = 0;
  for (let at = from; at < to; at++) {
    const place = order[at]!;
    const panelLeft = pixelLeft[place]!;
    const panelTop = pixelTop[place]!;
    if (panelLeft < left) left = panelLeft;
    if (panelTop < top) top = panelTop;
    if (panelLeft + pixelWidth[place]! > right) right = panelLeft + pixelWidth[place]!;
    if (panelTop + pixelHeight[place]! > bottom) bottom = panelTop + pixelHeight[place]!;
  }
  return (right - left) * (bottom - top);
}
