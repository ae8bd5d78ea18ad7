import { CellLinks } from './cell-links';
import { ChainWalk } from './chain-walk';
import type { Chains } from './chains';
import { endsOutOfReach } from './ends-out-of-reach';
import type { Region } from './region';

/** A panel that widens a rectangle adds a whole column or row to it: such excess weighs less, or nothing would move. */
const RECTANGLE_SOFTNESS = 2;

/**
 * Chains that cover a region, kept as links between neighbours, so that a chain is cut and another one joined in the time it
 * takes to walk them. Chains may be overloaded: `excess` says by how many panels' worth in all.
 */
export class PathCover {
  readonly region: Region;
  readonly links: CellLinks;
  /** Chain of every cell, and both ends, panels and pixels (by the way of counting) of every chain. */
  readonly chainOf: Int32Array;
  readonly endA: Int32Array;
  readonly endB: Int32Array;
  readonly count: Int32Array;
  readonly pixels: Float64Array;
  private readonly left: Float64Array;
  private readonly right: Float64Array;
  private readonly top: Float64Array;
  private readonly bottom: Float64Array;
  chains = 0;
  /** Panels of mean size too many on all chains; by rounding not exactly 0, for which see `overloaded`. */
  excess = 0;
  /** Chains with too much on them. */
  overloaded = 0;
  /** Ends above reach. */
  high = 0;
  private readonly rectangle: boolean;
  private readonly bothEnds: boolean;
  private readonly excessUnit: number;

  constructor(region: Region, start: Chains) {
    this.region = region;
    const { size, limits } = region;
    this.links = new CellLinks(size);
    this.chainOf = new Int32Array(size);
    this.endA = new Int32Array(size);
    this.endB = new Int32Array(size);
    this.count = new Int32Array(size);
    this.pixels = new Float64Array(size);
    this.left = new Float64Array(size);
    this.right = new Float64Array(size);
    this.top = new Float64Array(size);
    this.bottom = new Float64Array(size);
    this.rectangle = limits.counting === 'rectangle';
    this.bothEnds = limits.lastObeysReach === true;
    let sum = 0;
    for (let cell = 0; cell < size; cell++) sum += region.pixels[cell]!;
    this.excessUnit = (sum / size) * (this.rectangle ? RECTANGLE_SOFTNESS : 1);
    const walk = new ChainWalk(region, this.links);
    for (let i = 0; i + 1 < start.start.length; i++) {
      const first = start.start[i]!;
      for (let at = first + 1; at < start.start[i + 1]!; at++) this.links.link(start.order[at - 1]!, start.order[at]!);
      walk.go(start.order[first]!, -1);
      this.settle(this.chains++, start.order[first]!, walk);
    }
  }

  /** Panels too many, by pixels and by count. */
  excessOf(pixels: number, count: number): number {
    const { usablePixels, panelsMost } = this.region.limits;
    const excess = pixels > usablePixels ? (pixels - usablePixels) / this.excessUnit : 0;
    return count > panelsMost ? excess + count - panelsMost : excess;
  }

  excessOn(chain: number): number {
    return this.excessOf(this.pixels[chain]!, this.count[chain]!);
  }

  /** Ends above reach of a chain with these ends. */
  highOf(first: number, last: number): number {
    return endsOutOfReach(this.region.outOfReach, first, last, this.bothEnds);
  }

  /** The end of a chain that is not `end`; the same where it is one cell. */
  otherEnd(chain: number, end: number): number {
    return this.endA[chain] === end ? this.endB[chain]! : this.endA[chain]!;
  }

  /** Takes the box of a chain into that of a walk. */
  widen(walk: ChainWalk, chain: number): void {
    walk.widen(this.left[chain]!, this.right[chain]!, this.top[chain]!, this.bottom[chain]!);
  }

  /** Takes a chain out of the sums, before it is changed. */
  unsettle(chain: number): void {
    this.tally(chain, -1);
  }

  /** Enters a chain that has this end, and the other one and the load that a walk from there or elsewhere has found. */
  settle(chain: number, end: number, walk: ChainWalk): void {
    this.endA[chain] = end;
    this.endB[chain] = walk.last;
    this.count[chain] = walk.count;
    this.pixels[chain] = walk.pixels;
    this.left[chain] = walk.left;
    this.right[chain] = walk.right;
    this.top[chain] = walk.top;
    this.bottom[chain] = walk.bottom;
    this.tally(chain, 1);
    if (this.chainOf[end] !== chain || this.chainOf[walk.last] !== chain) this.relabel(end, chain);
  }

  /** The same chain with one end moved elsewhere on it. */
  settleTurned(chain: number, end: number, fixed: number): void {
    this.endA[chain] = end;
    this.endB[chain] = fixed;
    this.tally(chain, 1);
  }

  /** Cuts the most overloaded chain, or else the longest, in its middle; false where every chain is one panel. */
  cutWorst(): boolean {
    let worst = -1;
    for (let chain = 0; chain < this.chains; chain++) {
      if (this.count[chain]! < 2) continue;
      const order =
        worst < 0 ? 1 : this.excessOn(chain) - this.excessOn(worst) || this.count[chain]! - this.count[worst]!;
      if (order > 0) worst = chain;
    }
    if (worst < 0) return false;
    const { links } = this;
    const first = this.endA[worst]!;
    let before = -1;
    let at = first;
    for (let step = 1; step < this.count[worst]! >> 1; step++) {
      const next = links.onward(at, before);
      before = at;
      at = next;
    }
    const cut = links.onward(at, before);
    this.unsettle(worst);
    links.cut(at, cut);
    const walk = new ChainWalk(this.region, links);
    walk.go(first, -1);
    this.settle(worst, first, walk);
    walk.go(cut, -1);
    this.settle(this.chains++, cut, walk);
    return true;
  }

  /** Takes a chain without cells off the list; the last one gets its number. */
  drop(chain: number): void {
    const last = --this.chains;
    if (chain === last) return;
    this.relabel(this.endA[last]!, chain);
    this.endA[chain] = this.endA[last]!;
    this.endB[chain] = this.endB[last]!;
    this.count[chain] = this.count[last]!;
    this.pixels[chain] = this.pixels[last]!;
    this.left[chain] = this.left[last]!;
    this.right[chain] = this.right[last]!;
    this.top[chain] = this.top[last]!;
    this.bottom[chain] = this.bottom[last]!;
  }

  /** The chains as they stand. */
  read(): Chains {
    const order = new Int32Array(this.region.size);
    const start = new Int32Array(this.chains + 1);
    let written = 0;
    for (let chain = 0; chain < this.chains; chain++) {
      start[chain] = written;
      let before = -1;
      let at = this.endA[chain]!;
      while (at >= 0) {
        order[written++] = at;
        const next = this.links.onward(at, before);
        before = at;
        at = next;
      }
    }
    start[this.chains] = written;
    return { order, start };
  }

  relabel(end: number, chain: number): void {
    const { a, b } = this.links;
    let before = -1;
    let at = end;
    while (at >= 0) {
      this.chainOf[at] = chain;
      const next = a[at] === before ? b[at]! : a[at]!;
      before = at;
      at = next;
    }
  }

  private tally(chain: number, sign: 1 | -1): void {
    const excess = this.excessOn(chain);
    this.excess += sign * excess;
    if (excess > 0) this.overloaded += sign;
    this.high += sign * this.highOf(this.endA[chain]!, this.endB[chain]!);
  }
}
