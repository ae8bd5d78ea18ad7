import type { Region } from './region';
import type { ZoneToWire } from './zone-to-wire';

/** Strands cut into runs, by places and entry first, and a run for each panel that is too large. */
export function lineUp(
  zone: ZoneToWire,
  strands: readonly (readonly number[])[],
  cuts: readonly (readonly number[])[],
): { order: Int32Array; start: Int32Array } {
  const { region, tooLarge } = zone;
  const order = new Int32Array(region.size + tooLarge.length);
  const start: number[] = [];
  let written = 0;
  strands.forEach((strand, index) => {
    const ends = cuts[index]!;
    for (let i = 0; i + 1 < ends.length; i++) {
      start.push(written);
      const from = ends[i]!;
      const to = ends[i + 1]!;
      const turned = isBetterTurned(region, strand[from]!, strand[to - 1]!);
      for (let at = from; at < to; at++) order[written++] = region.places[strand[turned ? to - 1 - (at - from) : at]!]!;
    }
  });
  for (const place of tooLarge) {
    start.push(written);
    order[written++] = place;
  }
  start.push(written);
  return { order, start: Int32Array.from(start) };
}

/** A strand keeps its direction unless only its far end is in reach. */
function isBetterTurned(region: Region, first: number, last: number): boolean {
  return region.outOfReach[first] === 1 && region.outOfReach[last] === 0;
}
