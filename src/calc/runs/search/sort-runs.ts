import type { RunLimits, WiringGrid } from '../wiring-grid';
import type { RunList } from './run-list';
import { runPixels } from './run-pixels';
import type { WiringRuns } from './zone-wiring';

/** Copies runs in the order of their entries, by column, then row, and counts the pixels of each. */
export function sortRuns(grid: WiringGrid, limits: RunLimits, { order, start, ports }: Readonly<RunList>): WiringRuns {
  const runs = Array.from({ length: ports }, (_, run) => run);
  runs.sort((a, b) => order[start[a]!]! - order[start[b]!]!);
  const sorted = {
    order: new Int32Array(start[ports]!),
    start: new Int32Array(ports + 1),
    pixels: new Float64Array(ports),
  };
  let written = 0;
  runs.forEach((run, index) => {
    const from = start[run]!;
    const to = start[run + 1]!;
    sorted.order.set(order.subarray(from, to), written);
    sorted.pixels[index] = runPixels(grid, limits, order, from, to);
    written += to - from;
    sorted.start[index + 1] = written;
  });
  return sorted;
}
