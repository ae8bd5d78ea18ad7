import { endsOutOfReach } from './ends-out-of-reach';
import type { Region } from './region';
import { RunExtent } from './run-extent';

/** Where the runs of one strand start, and the strand's length at the end, in two styles that both need as few runs. */
export interface StrandCuts {
  /** Every run as long as can be, from the strand's first panel on. */
  readonly full: readonly number[];
  /** Runs of like load: least sum of squares. The same object as `full` where there is nothing to choose. */
  readonly even: readonly number[];
}

/**
 * Cuts strands (cells, each next to the one before) of one region into runs that fit: fewest ends above reach, then fewest
 * runs. Keeps its working space from strand to strand.
 */
export class StrandCutter {
  private readonly extent: RunExtent;
  /** Of what is left from each place on: ends above reach, runs, sum of squares, where its first run ends in either style. */
  private readonly high: Int32Array;
  private readonly runs: Int32Array;
  private readonly squares: Float64Array;
  private readonly fullEnd: Int32Array;
  private readonly evenEnd: Int32Array;

  private readonly region: Region;

  constructor(region: Region) {
    this.region = region;
    this.extent = new RunExtent(region);
    this.high = new Int32Array(region.size + 1);
    this.runs = new Int32Array(region.size + 1);
    this.squares = new Float64Array(region.size + 1);
    this.fullEnd = new Int32Array(region.size + 1);
    this.evenEnd = new Int32Array(region.size + 1);
  }

  cut(strand: readonly number[]): StrandCuts {
    const length = strand.length;
    if (this.fitsWhole(strand)) {
      const whole = [0, length];
      return { full: whole, even: whole };
    }
    this.high[length] = 0;
    this.runs[length] = 0;
    this.squares[length] = 0;
    for (let from = length - 1; from >= 0; from--) this.weigh(strand, from);
    return { full: follow(this.fullEnd, length), even: follow(this.evenEnd, length) };
  }

  /** Ends above reach that a strand leaves when cut so. */
  highOf(strand: readonly number[], cuts: readonly number[]): number {
    const { outOfReach, limits } = this.region;
    const bothEnds = limits.lastObeysReach === true;
    let high = 0;
    for (let i = 0; i + 1 < cuts.length; i++) {
      high += endsOutOfReach(outOfReach, strand[cuts[i]!]!, strand[cuts[i + 1]! - 1]!, bothEnds);
    }
    return high;
  }

  private fitsWhole(strand: readonly number[]): boolean {
    const { extent } = this;
    extent.clear();
    for (const cell of strand) {
      extent.add(cell);
      if (!extent.fits()) return false;
    }
    return true;
  }

  /** The best first run of what is left from `from` on, shorter ones first. */
  private weigh(strand: readonly number[], from: number): void {
    const { extent, high, runs, squares, fullEnd, evenEnd, region } = this;
    const bothEnds = region.limits.lastObeysReach === true;
    let bestHigh = Number.MAX_SAFE_INTEGER;
    let bestRuns = Number.MAX_SAFE_INTEGER;
    let bestSquares = Number.POSITIVE_INFINITY;
    extent.clear();
    for (let end = from + 1; end <= strand.length; end++) {
      extent.add(strand[end - 1]!);
      if (!extent.fits()) break;
      const allHigh = high[end]! + endsOutOfReach(region.outOfReach, strand[from]!, strand[end - 1]!, bothEnds);
      const allRuns = runs[end]! + 1;
      const order = allHigh - bestHigh || allRuns - bestRuns;
      if (order > 0) continue;
      const allSquares = squares[end]! + extent.pixels * extent.pixels;
      fullEnd[from] = end;
      if (order === 0 && allSquares >= bestSquares) continue;
      evenEnd[from] = end;
      bestHigh = allHigh;
      bestRuns = allRuns;
      bestSquares = allSquares;
    }
    high[from] = bestHigh;
    runs[from] = bestRuns;
    squares[from] = bestSquares;
  }
}

function follow(ends: Int32Array, length: number): number[] {
  const cuts = [0];
  for (let at = 0; at < length; ) {
    at = ends[at]!;
    cuts.push(at);
  }
  return cuts;
}
