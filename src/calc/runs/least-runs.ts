import type { RunLimits, WiringGrid } from './wiring-grid';

/** Runs that a zone needs at the least, whatever the wiring: its panels and pixels over what one run may hold, and one for every panel that is too large. */
export function leastRuns(grid: WiringGrid, limits: RunLimits): number {
  let panels = 0;
  let pixels = 0;
  let tooLarge = 0;
  let smallest = Number.POSITIVE_INFINITY;
  for (let place = 0; place < grid.present.length; place++) {
    if (grid.present[place] === 0) continue;
    const own = grid.pixelWidth[place]! * grid.pixelHeight[place]!;
    if (own > limits.usablePixels || limits.panelsMost < 1) {
      tooLarge++;
      continue;
    }
    panels++;
    pixels += own;
    smallest = Math.min(smallest, own);
  }
  if (panels === 0) return tooLarge;
  const most = Math.min(limits.panelsMost, Math.floor(limits.usablePixels / smallest));
  return tooLarge + Math.max(Math.ceil(panels / most), Math.ceil(pixels / limits.usablePixels));
}
