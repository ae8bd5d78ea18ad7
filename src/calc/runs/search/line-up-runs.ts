import type { Region } from './region';
import type { RunCuts } from './run-cuts';
import type { RunList } from './run-list';
import type { ZoneToWire } from './zone-to-wire';

/** Writes strands cut into runs, by places and entry first, and a run for each panel that is too large. */
export function lineUp({ grid, region, tooLarge }: ZoneToWire, cells: Int32Array, cuts: RunCuts, into: RunList): void {
  const { order, start, pixels } = into;
  const { places } = region;
  for (let run = 0; run < cuts.count; run++) {
    const from = cuts.start[run]!;
    const to = cuts.start[run + 1]!;
    start[run] = from;
    pixels[run] = cuts.pixels[run]!;
    if (isBetterTurned(region, cells[from]!, cells[to - 1]!)) {
      for (let at = from; at < to; at++) order[at] = places[cells[to - 1 - (at - from)]!]!;
    } else {
      for (let at = from; at < to; at++) order[at] = places[cells[at]!]!;
    }
  }
  let written = cuts.start[cuts.count]!;
  into.ports = cuts.count;
  for (const place of tooLarge) {
    start[into.ports] = written;
    pixels[into.ports++] = grid.pixelWidth[place]! * grid.pixelHeight[place]!;
    order[written++] = place;
  }
  start[into.ports] = written;
}

/** A strand keeps its direction unless only its far end is in reach. */
function isBetterTurned(region: Region, first: number, last: number): boolean {
  return region.outOfReach[first] === 1 && region.outOfReach[last] === 0;
}
