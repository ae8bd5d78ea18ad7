import type { WayOfWiring } from '../../../plan/hand-change';
import type { RunLimits, WiringGrid } from '../wiring-grid';
import { countFigures } from './count-figures';
import { endsOutOfReach } from './ends-out-of-reach';
import { estimateCable } from './estimate-cable';
import type { ZoneWiring } from './zone-wiring';

/** Measures runs (`order` by places, each from its entry on), and puts them in the order of their entries: by column, then row. */
export function measureWiring(
  grid: WiringGrid,
  limits: RunLimits,
  way: WayOfWiring,
  runs: { readonly order: Int32Array; readonly start: Int32Array },
  tooLarge: Int32Array,
): ZoneWiring {
  const { order, start } = sortByEntry(runs.order, runs.start);
  const ports = start.length - 1;
  const pixels = new Float64Array(ports);
  const returns = limits.lastObeysReach === true;
  let fewestPanels = ports === 0 ? 0 : Number.POSITIVE_INFINITY;
  let mostPanels = 0;
  let fullestPixels = 0;
  let entriesOutOfReach = 0;
  let highestEntryMm: number | null = null;
  const high = new Uint8Array(2);
  for (let run = 0; run < ports; run++) {
    const from = start[run]!;
    const to = start[run + 1]!;
    pixels[run] = runPixels(grid, limits, order, from, to);
    fullestPixels = Math.max(fullestPixels, pixels[run]!);
    fewestPanels = Math.min(fewestPanels, to - from);
    mostPanels = Math.max(mostPanels, to - from);
    const entryMm = grid.entryHeightMm[order[from]!]!;
    highestEntryMm = Math.max(highestEntryMm ?? entryMm, entryMm);
    high[0] = entryMm > limits.reachMm ? 1 : 0;
    high[1] = grid.entryHeightMm[order[to - 1]!]! > limits.reachMm ? 1 : 0;
    if (returns) entriesOutOfReach += endsOutOfReach(high, 0, to - from === 1 ? 0 : 1, true);
    else entriesOutOfReach += high[0]!;
  }
  return {
    way,
    order,
    start,
    ports,
    pixels,
    tooLarge,
    fewestPanels,
    mostPanels,
    fullestPixels,
    fullestShare: limits.usablePixels > 0 ? fullestPixels / limits.usablePixels : null,
    entriesOutOfReach,
    highestEntryMm,
    figures: countFigures(grid.rows, order, start),
    cableMm: estimateCable(grid, order, start, returns),
  };
}

/** Pixels that the panels `order[from .. to - 1]` count for on one port. */
export function runPixels(grid: WiringGrid, limits: RunLimits, order: Int32Array, from: number, to: number): number {
  const { pixelLeft, pixelTop, pixelWidth, pixelHeight } = grid;
  let sum = 0;
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = 0;
  let bottom = 0;
  for (let at = from; at < to; at++) {
    const place = order[at]!;
    sum += pixelWidth[place]! * pixelHeight[place]!;
    left = Math.min(left, pixelLeft[place]!);
    top = Math.min(top, pixelTop[place]!);
    right = Math.max(right, pixelLeft[place]! + pixelWidth[place]!);
    bottom = Math.max(bottom, pixelTop[place]! + pixelHeight[place]!);
  }
  return limits.counting === 'rectangle' && to > from ? (right - left) * (bottom - top) : sum;
}

function sortByEntry(order: Int32Array, start: Int32Array): { order: Int32Array; start: Int32Array } {
  const ports = start.length - 1;
  const runs = Array.from({ length: ports }, (_, run) => run);
  let sorted = true;
  for (let run = 1; run < ports; run++) if (order[start[run]!]! < order[start[run - 1]!]!) sorted = false;
  if (sorted) return { order, start };
  runs.sort((a, b) => order[start[a]!]! - order[start[b]!]!);
  const newOrder = new Int32Array(order.length);
  const newStart = new Int32Array(ports + 1);
  let written = 0;
  runs.forEach((run, index) => {
    newStart[index] = written;
    newOrder.set(order.subarray(start[run]!, start[run + 1]!), written);
    written += start[run + 1]! - start[run]!;
  });
  newStart[ports] = written;
  return { order: newOrder, start: newStart };
}
