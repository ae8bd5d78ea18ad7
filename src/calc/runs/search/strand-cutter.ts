import { endsOutOfReach } from './ends-out-of-reach';
import { InReachCutter } from './in-reach-cutter';
import type { Region } from './region';
import type { RunCuts } from './run-cuts';
import type { StrandList } from './strand-list';

/**
 * Cuts strands of one region into runs that fit: fewest ends above reach, then fewest runs. Two styles need as few: runs as
 * long as can be from the strand's first panel on, and runs of like load (least sum of squares). Keeps its working space from
 * strand to strand.
 */
export class StrandCutter {
  /** Of what is left from each place on: ends above reach, runs, sum of squares, where its first run ends in either style and its pixels. */
  private readonly high: Int32Array;
  private readonly runs: Int32Array;
  private readonly squares: Float64Array;
  private readonly fullEnd: Int32Array;
  private readonly evenEnd: Int32Array;
  private readonly fullLoad: Float64Array;
  private readonly evenLoad: Float64Array;
  private readonly region: Region;
  private readonly rectangle: boolean;
  /** Panels that a run holds where all are of one size and their pixels count; null where they differ. */
  private readonly alike: number | null;
  private readonly allInReach: boolean;
  private readonly inReach: InReachCutter;

  constructor(region: Region) {
    const { size, limits } = region;
    this.region = region;
    this.rectangle = limits.counting === 'rectangle';
    this.high = new Int32Array(size + 1);
    this.runs = new Int32Array(size + 1);
    this.squares = new Float64Array(size + 1);
    this.fullEnd = new Int32Array(size + 1);
    this.evenEnd = new Int32Array(size + 1);
    this.fullLoad = new Float64Array(size + 1);
    this.evenLoad = new Float64Array(size + 1);
    this.alike = panelsAlike(region);
    this.allInReach = region.outOfReach.every((out) => out === 0);
    this.inReach = new InReachCutter(region);
  }

  /** Cuts all strands of a list, in both styles; true where they differ. */
  cutAll(strands: StrandList, full: RunCuts, even: RunCuts): boolean {
    full.count = 0;
    even.count = 0;
    let differ = false;
    for (let strand = 0; strand < strands.count; strand++) {
      const from = strands.start[strand]!;
      const to = strands.start[strand + 1]!;
      const load = this.loadOf(strands.cells, from, to);
      if (this.isBestWhole(strands.cells, from, to, load)) {
        add(full, to, load);
        add(even, to, load);
        continue;
      }
      differ = true;
      if (!this.isInReach(strands.cells, from, to)) this.cut(strands.cells, from, to, full, even);
      else if (this.alike === null) this.inReach.cut(strands.cells, from, to, full, even);
      else divide(this.alike, this.region.pixels[0]!, from, to, full, even);
    }
    return differ;
  }

  /** Ends above reach that strands leave when cut so. */
  highOf({ cells }: StrandList, { start, count }: RunCuts): number {
    const { outOfReach, limits } = this.region;
    const bothEnds = limits.lastObeysReach === true;
    let high = 0;
    for (let run = 0; run < count; run++) {
      high += endsOutOfReach(outOfReach, cells[start[run]!]!, cells[start[run + 1]! - 1]!, bothEnds);
    }
    return high;
  }

  /** Whether a port takes a strand whole and no cut would bring an end within reach. */
  private isBestWhole(cells: Int32Array, from: number, to: number, load: number): boolean {
    const { limits, outOfReach } = this.region;
    if (load > limits.usablePixels || to - from > limits.panelsMost) return false;
    return endsOutOfReach(outOfReach, cells[from]!, cells[to - 1]!, limits.lastObeysReach === true) === 0;
  }

  private isInReach(cells: Int32Array, from: number, to: number): boolean {
    if (this.allInReach) return true;
    for (let at = from; at < to; at++) if (this.region.outOfReach[cells[at]!] === 1) return false;
    return true;
  }

  private loadOf(cells: Int32Array, from: number, to: number): number {
    const { pixels } = this.region;
    if (this.rectangle) return this.rectangleOf(cells, from, to);
    if (this.alike !== null) return (to - from) * pixels[0]!;
    let sum = 0;
    for (let at = from; at < to; at++) sum += pixels[cells[at]!]!;
    return sum;
  }

  private rectangleOf(cells: Int32Array, from: number, to: number): number {
    const { left, right, top, bottom } = this.region;
    let l = Number.POSITIVE_INFINITY;
    let r = 0;
    let t = Number.POSITIVE_INFINITY;
    let b = 0;
    for (let at = from; at < to; at++) {
      const cell = cells[at]!;
      if (left[cell]! < l) l = left[cell]!;
      if (right[cell]! > r) r = right[cell]!;
      if (top[cell]! < t) t = top[cell]!;
      if (bottom[cell]! > b) b = bottom[cell]!;
    }
    return (r - l) * (b - t);
  }

  private cut(cells: Int32Array, from: number, to: number, full: RunCuts, even: RunCuts): void {
    this.high[to] = 0;
    this.runs[to] = 0;
    this.squares[to] = 0;
    for (let at = to - 1; at >= from; at--) this.weigh(cells, at, to);
    follow(this.fullEnd, this.fullLoad, from, to, full);
    follow(this.evenEnd, this.evenLoad, from, to, even);
  }

  /** The best first run of what is left from `from` on, shorter ones first. */
  private weigh(cells: Int32Array, from: number, to: number): void {
    const { high, runs, squares, region, rectangle } = this;
    const { pixels, left, right, top, bottom, outOfReach, limits } = region;
    const { usablePixels, lastObeysReach } = limits;
    const bothEnds = lastObeysReach === true;
    const last = Math.min(to, from + limits.panelsMost);
    const first = cells[from]!;
    let bestHigh = Number.MAX_SAFE_INTEGER;
    let bestRuns = Number.MAX_SAFE_INTEGER;
    let bestSquares = Number.POSITIVE_INFINITY;
    let fullEnd = from;
    let evenEnd = from;
    let fullLoad = 0;
    let evenLoad = 0;
    let l = Number.POSITIVE_INFINITY;
    let r = 0;
    let t = Number.POSITIVE_INFINITY;
    let b = 0;
    let load = 0;
    for (let end = from + 1; end <= last; end++) {
      const cell = cells[end - 1]!;
      if (rectangle) {
        if (left[cell]! < l) l = left[cell]!;
        if (right[cell]! > r) r = right[cell]!;
        if (top[cell]! < t) t = top[cell]!;
        if (bottom[cell]! > b) b = bottom[cell]!;
        load = (r - l) * (b - t);
      } else load += pixels[cell]!;
      if (load > usablePixels) break;
      const allHigh = high[end]! + endsOutOfReach(outOfReach, first, cell, bothEnds);
      const allRuns = runs[end]! + 1;
      const order = allHigh - bestHigh || allRuns - bestRuns;
      if (order > 0) continue;
      const allSquares = squares[end]! + load * load;
      fullEnd = end;
      fullLoad = load;
      if (order === 0 && allSquares >= bestSquares) continue;
      evenEnd = end;
      evenLoad = load;
      bestHigh = allHigh;
      bestRuns = allRuns;
      bestSquares = allSquares;
    }
    this.fullEnd[from] = fullEnd;
    this.evenEnd[from] = evenEnd;
    this.fullLoad[from] = fullLoad;
    this.evenLoad[from] = evenLoad;
    high[from] = bestHigh;
    runs[from] = bestRuns;
    squares[from] = bestSquares;
  }
}

function panelsAlike({ pixels, limits }: Region): number | null {
  const first = pixels[0];
  if (first === undefined || limits.counting === 'rectangle' || pixels.some((each) => each !== first)) return null;
  const byPixels = (limits.usablePixels - (limits.usablePixels % first)) / first;
  return Math.min(Math.floor(limits.panelsMost), byPixels);
}

function add(cuts: RunCuts, end: number, pixels: number): void {
  cuts.pixels[cuts.count] = pixels;
  cuts.start[++cuts.count] = end;
}

/** Runs of `most` panels, and as many as like each other as can be, shorter ones first. */
function divide(most: number, pixels: number, from: number, to: number, full: RunCuts, even: RunCuts): void {
  for (let at = from; at < to; ) {
    const panels = Math.min(to - at, most);
    at += panels;
    add(full, at, panels * pixels);
  }
  let runs = Math.ceil((to - from) / most);
  for (let at = from; at < to; runs--) {
    const panels = Math.floor((to - at) / runs);
    at += panels;
    add(even, at, panels * pixels);
  }
}

function follow(ends: Int32Array, loads: Float64Array, from: number, to: number, cuts: RunCuts): void {
  for (let at = from; at < to; ) {
    const load = loads[at]!;
    at = ends[at]!;
    add(cuts, at, load);
  }
}
