import type { Region } from '../region';
import { ceilDivide } from './ceil-divide';
import { leastBins } from './least-bins';
import type { MostOnARun } from './least-chains';
import { weightBefore } from './weight-before';

/** A proved lower bound: every cover of the region whose runs all fit leaves at least so many ends above reach. */
export function leastHigh(region: Region, most: MostOnARun): number {
  if (region.size === 0) return 0;
  const ones = new Uint8Array(region.size).fill(1);
  const pixelsBefore = weightBefore(region, region.pixels);
  const panelsBefore = weightBefore(region, ones);
  return Math.max(
    leastBeyondAll(region, most, pixelsBefore, panelsBefore),
    leastByEntries(region, most),
    leastByCrossings(region, pixelsBefore, region.pixels, most.pixels),
    leastByCrossings(region, panelsBefore, ones, most.panels),
  );
}

/** Panels too deep for any run from an entry in reach are on runs that have none, and these need so many runs. */
function leastBeyondAll(
  region: Region,
  most: MostOnARun,
  pixelsBefore: Float64Array,
  panelsBefore: Float64Array,
): number {
  const deep: number[] = [];
  for (let cell = 0; cell < region.size; cell++) {
    const reached = pixelsBefore[cell]! + region.pixels[cell]! <= most.pixels && panelsBefore[cell]! + 1 <= most.panels;
    if (!reached) deep.push(region.pixels[cell]!);
  }
  return deep.length === 0 ? 0 : leastBins(deep, most.pixels);
}

/**
 * Every panel in reach is the end of one run at most, unless it is a run of its own. Without returns so many runs have an
 * entry; with them a run of several panels has two ends and a run of one panel has one.
 */
function leastByEntries(region: Region, most: MostOnARun): number {
  let inReach = 0;
  for (const out of region.outOfReach) inReach += 1 - out;
  const runs = Math.floor(region.size / most.panels);
  const rest = region.size % most.panels;
  if (region.limits.lastObeysReach !== true) return runs + (rest > 0 ? 1 : 0) - inReach;
  return (most.panels === 1 ? region.size : 2 * runs + Math.min(2, rest)) - inReach;
}

/**
 * Runs come into what is deep only over the panels at its edge, and each has gathered some weight by then; what these cannot
 * take is on runs that begin there.
 */
function leastByCrossings(region: Region, before: Float64Array, weight: ArrayLike<number>, most: number): number {
  const { size } = region;
  const cells = Array.from(before.keys()).sort((a, b) =>
    before[a]! < before[b]! ? 1 : before[a]! > before[b]! ? -1 : 0,
  );
  let least = 0;
  let deep = 0;
  let heaviest = 0;
  const shore = new Shore(region);
  for (let i = 0; i < size; i++) {
    const cell = cells[i]!;
    deep += weight[cell]!;
    heaviest = Math.max(heaviest, weight[cell]!);
    shore.sink(cell);
    const depth = before[cell]!;
    if (depth === 0) break;
    if (depth === Number.POSITIVE_INFINITY || (i + 1 < size && before[cells[i + 1]!] === depth)) continue;
    // With returns a run is two halves, each of which comes from reach or not; both may come to the same deep panel.
    const half = region.limits.lastObeysReach === true ? 2 : 1;
    const crossings = Math.min(shore.inside * half, shore.outside);
    const taken = crossings * Math.max(0, most / half - depth);
    least = Math.max(
      least,
      ceilDivide(Math.max(0, deep - taken) * half, half === 1 ? most : Math.max(most, 2 * heaviest)),
    );
  }
  return least;
}

/** Cells on both sides of the line between what is deep and what is not, kept as one cell after the other sinks. */
class Shore {
  /** Deep cells with a neighbour that is not, and the other way round. */
  inside = 0;
  outside = 0;
  private readonly neighbours: Int32Array;
  private readonly isDeep: Uint8Array;
  /** Neighbours of each cell that are not deep, and that are. */
  private readonly dry: Uint8Array;
  private readonly deep: Uint8Array;

  constructor({ size, neighbours }: Region) {
    this.neighbours = neighbours;
    this.isDeep = new Uint8Array(size);
    this.dry = new Uint8Array(size);
    this.deep = new Uint8Array(size);
    for (let at = 0; at < size * 4; at++) if (neighbours[at]! >= 0) this.dry[at >> 2]!++;
  }

  sink(cell: number): void {
    if (this.deep[cell]! > 0) this.outside--;
    if (this.dry[cell]! > 0) this.inside++;
    this.isDeep[cell] = 1;
    for (let side = 0; side < 4; side++) {
      const to = this.neighbours[cell * 4 + side]!;
      if (to < 0) continue;
      this.deep[to]!++;
      this.dry[to]!--;
      if (this.isDeep[to] === 0 && this.deep[to] === 1) this.outside++;
      if (this.isDeep[to] === 1 && this.dry[to] === 0) this.inside--;
    }
  }
}
