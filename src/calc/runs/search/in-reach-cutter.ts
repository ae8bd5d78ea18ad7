import type { Region } from './region';
import type { RunCuts } from './run-cuts';

/**
 * Cuts strands none of whose panels is above reach, where loads alone matter, in the two styles of `StrandCutter`. A cut may
 * move between the place where as few runs as can be are left and the place to which as few can come from the beginning;
 * only between these loads are weighed, each put together of what stands before and behind a place in the middle.
 */
export class InReachCutter {
  private readonly region: Region;
  private readonly rectangle: boolean;
  private readonly panelsMost: number;
  /** Least place from which so many runs come to the end, and greatest to which so many come from the beginning. */
  private readonly least: Int32Array;
  private readonly greatest: Int32Array;
  /** Of the best runs from each place on: sum of squares, where the first ends, its pixels. */
  private readonly squares: Float64Array;
  private readonly end: Int32Array;
  private readonly load: Float64Array;
  /** Gathered from each place up to the middle behind it, then from the middle before it: pixels, or edges on the canvas. */
  private readonly pixels: Float64Array;
  private readonly left: Float64Array;
  private readonly right: Float64Array;
  private readonly top: Float64Array;
  private readonly bottom: Float64Array;

  constructor(region: Region) {
    const room = region.size + 1;
    this.region = region;
    this.rectangle = region.limits.counting === 'rectangle';
    this.panelsMost = Math.floor(region.limits.panelsMost);
    this.least = new Int32Array(room);
    this.greatest = new Int32Array(room);
    this.squares = new Float64Array(room);
    this.end = new Int32Array(room);
    this.load = new Float64Array(room);
    this.pixels = new Float64Array(room);
    this.left = new Float64Array(room);
    this.right = new Float64Array(room);
    this.top = new Float64Array(room);
    this.bottom = new Float64Array(room);
  }

  /** Adds the runs of the strand `cells[from .. to - 1]`, each of whose panels fits a port. */
  cut(cells: Int32Array, from: number, to: number, full: RunCuts, even: RunCuts): void {
    const { least, greatest, end, load } = this;
    greatest[0] = from;
    let runs = 0;
    for (let at = from; at < to; greatest[++runs] = at) {
      at = this.gather(cells, at, to);
      full.pixels[full.count] = this.pixels[at]!;
      full.start[++full.count] = at;
    }
    least[0] = to;
    for (let run = 1; run <= runs; run++) least[run] = this.gather(cells, least[run - 1]!, from);
    this.squares[to] = 0;
    for (let run = 1; run <= runs; run++) {
      const middle = least[run - 1]!;
      this.gather(cells, middle, greatest[runs - run + 1]!);
      this.weigh(least[run]!, greatest[runs - run]!, middle, greatest[runs - run + 1]!);
    }
    for (let at = from; at < to; ) {
      even.pixels[even.count] = load[at]!;
      at = end[at]!;
      even.start[++even.count] = at;
    }
  }

  /** Goes from a place on or back, as far as `limit` or as a run goes, and leaves at every place what stands in between. */
  private gather(cells: Int32Array, from: number, limit: number): number {
    const { region, rectangle, panelsMost, pixels, left, right, top, bottom } = this;
    const { usablePixels } = region.limits;
    const step = limit < from ? -1 : 1;
    const last = step < 0 ? Math.max(limit, from - panelsMost) : Math.min(limit, from + panelsMost);
    let load = 0;
    let l = Number.POSITIVE_INFINITY;
    let r = 0;
    let t = Number.POSITIVE_INFINITY;
    let b = 0;
    for (let at = from; at !== last; at += step) {
      const cell = cells[step < 0 ? at - 1 : at]!;
      if (rectangle) {
        if (region.left[cell]! < l) l = region.left[cell]!;
        if (region.right[cell]! > r) r = region.right[cell]!;
        if (region.top[cell]! < t) t = region.top[cell]!;
        if (region.bottom[cell]! > b) b = region.bottom[cell]!;
        load = (r - l) * (b - t);
      } else load += region.pixels[cell]!;
      if (load > usablePixels) return at;
      pixels[at + step] = load;
      left[at + step] = l;
      right[at + step] = r;
      top[at + step] = t;
      bottom[at + step] = b;
    }
    return last;
  }

  /** The best first run from every place `least` .. `greatest`, all before the middle, to a place from the middle up to `last`. */
  private weigh(least: number, greatest: number, middle: number, last: number): void {
    const { rectangle, panelsMost, squares, end, pixels, left, right, top, bottom } = this;
    const { usablePixels } = this.region.limits;
    for (let from = least; from <= greatest; from++) {
      let best = Number.POSITIVE_INFINITY;
      const to = Math.min(last, from + panelsMost);
      for (let at = middle; at <= to; at++) {
        let load = pixels[from]!;
        if (at > middle) {
          load = rectangle
            ? (Math.max(right[from]!, right[at]!) - Math.min(left[from]!, left[at]!)) *
              (Math.max(bottom[from]!, bottom[at]!) - Math.min(top[from]!, top[at]!))
            : load + pixels[at]!;
        }
        if (load > usablePixels) break;
        const all = squares[at]! + load * load;
        if (all >= best) continue;
        best = all;
        end[from] = at;
        this.load[from] = load;
      }
      squares[from] = best;
    }
  }
}
