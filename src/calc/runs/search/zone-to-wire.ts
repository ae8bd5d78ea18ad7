import type { RunLimits, WiringGrid } from '../wiring-grid';
import { largestLoad } from './bounds/largest-load';
import { lowestRow } from './lowest-row';
import { compareWithMirror } from './mirror-grid';
import { type Region, regionOf } from './region';

/** A zone made ready: its panels by whether a port takes them at all, and what most of them fit on one. */
export interface ZoneToWire {
  readonly grid: WiringGrid;
  readonly limits: RunLimits;
  /** The panels that can share a port. Its limits are those of the zone brought down to what panels can add up to. */
  readonly region: Region;
  /** Cell of the region at every place, -1 where there is none. */
  readonly cellAt: Int32Array;
  /** Places whose panel alone is more than a port takes; all of them where a run may hold no panel. */
  readonly tooLarge: Int32Array;
  /** Most panels that one run can hold: the smallest panels, by pixels and by count. */
  readonly panelsAtMost: number;
  /** Whether its mirror image is the same zone: a way begun from the right is then the mirror image of one begun from the left. */
  readonly symmetric: boolean;
  readonly lowestRow: number;
}

export function makeReady(grid: WiringGrid, limits: RunLimits): ZoneToWire {
  const placeable: number[] = [];
  const tooLarge: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  let greatest = 0;
  for (let place = 0; place < grid.present.length; place++) {
    if (grid.present[place] === 0) continue;
    const pixels = grid.pixelWidth[place]! * grid.pixelHeight[place]!;
    const fits = pixels <= limits.usablePixels && limits.panelsMost >= 1;
    (fits ? placeable : tooLarge).push(place);
    if (!fits) continue;
    least = Math.min(least, pixels);
    greatest = Math.max(greatest, pixels);
  }
  const asGiven = regionOf(grid, limits, Int32Array.from(placeable));
  const region = { ...asGiven, limits: effectiveLimits(asGiven, least === greatest) };
  const cellAt = new Int32Array(grid.columns * grid.rows).fill(-1);
  for (let cell = 0; cell < region.size; cell++) cellAt[region.places[cell]!] = cell;
  return {
    grid,
    limits,
    region,
    cellAt,
    tooLarge: Int32Array.from(tooLarge),
    panelsAtMost:
      region.size === 0
        ? 0
        : Math.min(region.size, Math.floor(limits.panelsMost), Math.floor(limits.usablePixels / least)),
    symmetric: compareWithMirror(grid, limits.counting) === 0,
    lowestRow: lowestRow(grid),
  };
}

/** Limits that allow the same runs and are the same for all that do, so that a little more or less usable changes nothing. */
function effectiveLimits(region: Region, oneSize: boolean): RunLimits {
  const { limits, size } = region;
  if (size === 0 || limits.counting === 'rectangle') return limits;
  const usablePixels = largestLoad(region);
  if (!oneSize) return { ...limits, usablePixels };
  return {
    ...limits,
    usablePixels: Math.min(usablePixels, Math.floor(limits.panelsMost) * region.pixels[0]!),
    panelsMost: size,
  };
}
