import type { RunList } from './run-list';
import type { WiringRuns } from './zone-wiring';

/** Copies runs in the order of their entries, by column, then row. */
export function sortRuns({ order, start, pixels, ports }: Readonly<RunList>): WiringRuns {
  const runs = Array.from({ length: ports }, (_, run) => run);
  runs.sort((a, b) => order[start[a]!]! - order[start[b]!]!);
  const sorted = {
    order: new Int32Array(start[ports]!),
    start: new Int32Array(ports + 1),
    pixels: new Float64Array(ports),
  };
  let written = 0;
  runs.forEach((run, index) => {
    sorted.order.set(order.subarray(start[run]!, start[run + 1]!), written);
    sorted.pixels[index] = pixels[run]!;
    written += start[run + 1]! - start[run]!;
    sorted.start[index + 1] = written;
  });
  return sorted;
}
