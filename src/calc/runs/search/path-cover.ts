import type { Chains } from './chains';
import { endsOutOfReach } from './ends-out-of-reach';
import type { Region } from './region';

/** What a walk along links has met: its far end, panels, pixels and box on the canvas. */
interface Walk {
  last: number;
  count: number;
  pixels: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const emptyWalk = (): Walk => ({ last: -1, count: 0, pixels: 0, left: 0, right: 0, top: 0, bottom: 0 });

/** A panel that widens a rectangle adds a whole column or row to it: such excess weighs less, or nothing would move. */
const RECTANGLE_SOFTNESS = 2;

/**
 * Chains that cover a region, kept as links between neighbours so that a chain is cut and another one joined in the time
 * it takes to walk them. Chains may be overloaded: `excess` says by how many panels' worth in all.
 */
export class PathCover {
  readonly linkA: Int32Array;
  readonly linkB: Int32Array;
  /** Chain of every cell. */
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
  /** Sum over the chains of what is too much on them, in panels of mean size; by rounding not exactly 0, for which see `overloaded`. */
  excess = 0;
  /** Chains with too much on them. */
  overloaded = 0;
  /** Ends above reach. */
  high = 0;
  private readonly rectangle: boolean;
  private readonly bothEnds: boolean;
  private readonly meanPixels: number;
  private readonly usable: number;
  private readonly most: number;
  private readonly far = emptyWalk();
  private readonly near = emptyWalk();

  /** What the change proposed last would do; `commit` makes it so. */
  excessChange = 0;
  highChange = 0;
  bendsChange = 0;
  private kind: 'none' | 'turn' | 'exchange' | 'join' = 'none';
  private chain = 0;
  private other = 0;
  private from = 0;
  private to = 0;
  private cut = 0;

  readonly region: Region;

  constructor(region: Region, start: Chains) {
    this.region = region;
    const { size, limits } = region;
    this.linkA = new Int32Array(size).fill(-1);
    this.linkB = new Int32Array(size).fill(-1);
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
    this.usable = limits.usablePixels;
    this.most = limits.panelsMost;
    let sum = 0;
    for (let cell = 0; cell < size; cell++) sum += region.pixels[cell]!;
    this.meanPixels = (sum / size) * (this.rectangle ? RECTANGLE_SOFTNESS : 1);
    for (let i = 0; i + 1 < start.start.length; i++) this.addChain(start.order, start.start[i]!, start.start[i + 1]!);
  }

  private addChain(order: Int32Array, from: number, to: number): void {
    const chain = this.chains++;
    for (let at = from + 1; at < to; at++) {
      this.link(order[at - 1]!, order[at]!);
      this.link(order[at]!, order[at - 1]!);
    }
    this.walk(order[from]!, -1, this.far);
    this.settle(chain, order[from]!, this.far);
    this.relabel(order[from]!, -1, chain);
    this.tally(chain, 1);
  }

  private link(cell: number, to: number): void {
    if (this.linkA[cell]! < 0) this.linkA[cell] = to;
    else this.linkB[cell] = to;
  }

  private unlink(cell: number, from: number): void {
    if (this.linkA[cell] === from) this.linkA[cell] = -1;
    else this.linkB[cell] = -1;
  }

  /** The other link of a cell, -1 at an end. */
  onward(cell: number, from: number): number {
    return this.linkA[cell] === from ? this.linkB[cell]! : this.linkA[cell]!;
  }

  /** From `cell` on, away from `from` (-1: from an end on). */
  private walk(cell: number, from: number, into: Walk): void {
    const { linkA, linkB, rectangle } = this;
    const { pixels, left, right, top, bottom } = this.region;
    into.count = 0;
    into.pixels = 0;
    into.left = Number.POSITIVE_INFINITY;
    into.right = 0;
    into.top = Number.POSITIVE_INFINITY;
    into.bottom = 0;
    let before = from;
    let at = cell;
    while (at >= 0) {
      into.count++;
      into.last = at;
      if (rectangle) {
        if (left[at]! < into.left) into.left = left[at]!;
        if (right[at]! > into.right) into.right = right[at]!;
        if (top[at]! < into.top) into.top = top[at]!;
        if (bottom[at]! > into.bottom) into.bottom = bottom[at]!;
      } else into.pixels += pixels[at]!;
      // At an end one link is -1, which is also where a walk from an end comes from: take the link that is there.
      const next = linkA[at] === before ? linkB[at]! : linkA[at]!;
      before = at;
      at = next;
    }
    if (rectangle) into.pixels = (into.right - into.left) * (into.bottom - into.top);
  }

  private relabel(cell: number, from: number, chain: number): void {
    let before = from;
    let at = cell;
    while (at >= 0) {
      this.chainOf[at] = chain;
      const next = this.linkA[at] === before ? this.linkB[at]! : this.linkA[at]!;
      before = at;
      at = next;
    }
  }

  private settle(chain: number, end: number, walk: Walk): void {
    this.endA[chain] = end;
    this.endB[chain] = walk.last;
    this.count[chain] = walk.count;
    this.pixels[chain] = walk.pixels;
    this.left[chain] = walk.left;
    this.right[chain] = walk.right;
    this.top[chain] = walk.top;
    this.bottom[chain] = walk.bottom;
  }

  excessOf(pixels: number, count: number): number {
    let excess = pixels > this.usable ? (pixels - this.usable) / this.meanPixels : 0;
    if (count > this.most) excess += count - this.most;
    return excess;
  }

  highOf(first: number, last: number): number {
    return endsOutOfReach(this.region.outOfReach, first, last, this.bothEnds);
  }

  private tally(chain: number, sign: 1 | -1): void {
    const excess = this.excessOf(this.pixels[chain]!, this.count[chain]!);
    this.excess += sign * excess;
    if (excess > 0) this.overloaded += sign;
    this.high += sign * this.highOf(this.endA[chain]!, this.endB[chain]!);
  }

  /**
   * Proposes to lead the end `from` of its chain to the neighbour `to` and to cut `to` off from one of its own two links
   * (the second where `second`): on one chain its end moves, between two the far part of the other chain stays behind.
   * Where `to` is a whole chain or `joining` and an end, nothing is cut and the two chains become one.
   * False where there is nothing to change.
   */
  propose(from: number, to: number, second: boolean, joining: boolean): boolean {
    this.kind = 'none';
    const { linkA, linkB } = this;
    if (linkA[from] === to || linkB[from] === to) return false;
    const chain = this.chainOf[from]!;
    const other = this.chainOf[to]!;
    this.chain = chain;
    this.other = other;
    this.from = from;
    this.to = to;
    if (chain === other) return this.proposeTurn();
    const a = linkA[to]!;
    const b = linkB[to]!;
    if (a < 0 || b < 0) {
      if (joining) return this.proposeJoin();
      if (a < 0 && b < 0) return false;
    }
    this.cut = a < 0 ? b : b < 0 ? a : second ? a : b;
    return this.proposeExchange();
  }

  private bend(cell: number, one: number, two: number): number {
    if (one < 0 || two < 0) return 0;
    const { column, row } = this.region;
    return column[one]! + column[two]! === 2 * column[cell]! && row[one]! + row[two]! === 2 * row[cell]! ? 0 : 1;
  }

  private changeOfBends(): number {
    const { from, to, cut } = this;
    const kept = this.onward(to, cut);
    return (
      this.bend(from, this.inward(from), to) +
      this.bend(to, kept, from) -
      this.bend(to, kept, cut) -
      this.bend(cut, this.onward(cut, to), to)
    );
  }

  /** The one link of an end; -1 for a whole chain. */
  private inward(end: number): number {
    return this.linkA[end]! < 0 ? this.linkB[end]! : this.linkA[end]!;
  }

  private proposeTurn(): boolean {
    const { from, to, chain } = this;
    let before = -1;
    let at = from;
    while (at !== to) {
      const next = this.linkA[at] === before ? this.linkB[at]! : this.linkA[at]!;
      before = at;
      at = next;
    }
    this.cut = before;
    const fixed = this.endA[chain] === from ? this.endB[chain]! : this.endA[chain]!;
    this.kind = 'turn';
    this.excessChange = 0;
    this.highChange = this.highOf(before, fixed) - this.highOf(from, fixed);
    this.bendsChange = this.changeOfBends();
    return true;
  }

  private proposeExchange(): boolean {
    const { from, to, cut, chain, other, far, near } = this;
    this.walk(cut, to, far);
    if (this.rectangle) {
      this.walk(to, cut, near);
      near.left = Math.min(near.left, this.left[chain]!);
      near.right = Math.max(near.right, this.right[chain]!);
      near.top = Math.min(near.top, this.top[chain]!);
      near.bottom = Math.max(near.bottom, this.bottom[chain]!);
      near.pixels = (near.right - near.left) * (near.bottom - near.top);
    } else {
      near.last = this.endA[other] === far.last ? this.endB[other]! : this.endA[other]!;
      near.pixels = this.pixels[chain]! + this.pixels[other]! - far.pixels;
    }
    near.count = this.count[chain]! + this.count[other]! - far.count;
    const fixed = this.endA[chain] === from ? this.endB[chain]! : this.endA[chain]!;
    this.kind = 'exchange';
    this.excessChange =
      this.excessOf(near.pixels, near.count) +
      this.excessOf(far.pixels, far.count) -
      this.excessOf(this.pixels[chain]!, this.count[chain]!) -
      this.excessOf(this.pixels[other]!, this.count[other]!);
    this.highChange =
      this.highOf(fixed, near.last) +
      this.highOf(cut, far.last) -
      this.highOf(from, fixed) -
      this.highOf(this.endA[other]!, this.endB[other]!);
    this.bendsChange = this.changeOfBends();
    return true;
  }

  private proposeJoin(): boolean {
    const { from, to, chain, other } = this;
    this.kind = 'join';
    const fixed = this.endA[chain] === from ? this.endB[chain]! : this.endA[chain]!;
    const end = this.endA[other] === to ? this.endB[other]! : this.endA[other]!;
    this.highChange = this.highOf(fixed, end) - this.highOf(from, fixed) - this.highOf(to, end);
    this.bendsChange = this.bend(from, this.inward(from), to) + this.bend(to, this.inward(to), from);
    this.excessChange = 0;
    return true;
  }

  /** Makes the change proposed last. */
  commit(): void {
    const { from, to, cut, chain, other, kind } = this;
    if (kind === 'none') return;
    this.tally(chain, -1);
    const fixed = this.endA[chain] === from ? this.endB[chain]! : this.endA[chain]!;
    if (kind === 'turn') {
      this.unlink(to, cut);
      this.unlink(cut, to);
      this.endA[chain] = cut;
      this.endB[chain] = fixed;
    } else {
      this.tally(other, -1);
      if (kind === 'exchange') {
        this.unlink(to, cut);
        this.unlink(cut, to);
      }
      this.relabel(to, -1, chain);
    }
    this.link(from, to);
    this.link(to, from);
    if (kind === 'exchange') {
      this.settle(other, cut, this.far);
      this.settle(chain, fixed, this.near);
      this.tally(other, 1);
    } else if (kind === 'join') {
      this.walk(fixed, -1, this.near);
      this.settle(chain, fixed, this.near);
    }
    this.tally(chain, 1);
    if (kind === 'join') this.drop(other);
    this.kind = 'none';
  }

  /** Cuts the most overloaded chain, or else the longest, in its middle; false where every chain is one panel. */
  cutWorst(): boolean {
    let worst = -1;
    let worstExcess = -1;
    for (let chain = 0; chain < this.chains; chain++) {
      if (this.count[chain]! < 2) continue;
      const excess = this.excessOf(this.pixels[chain]!, this.count[chain]!);
      if (worst < 0 || (excess - worstExcess || this.count[chain]! - this.count[worst]!) > 0) {
        worst = chain;
        worstExcess = excess;
      }
    }
    if (worst < 0) return false;
    const first = this.endA[worst]!;
    let before = -1;
    let at = first;
    for (let step = 1; step < this.count[worst]! >> 1; step++) {
      const next = this.onward(at, before);
      before = at;
      at = next;
    }
    const cut = this.onward(at, before);
    this.tally(worst, -1);
    this.unlink(at, cut);
    this.unlink(cut, at);
    this.walk(first, -1, this.near);
    this.settle(worst, first, this.near);
    const chain = this.chains++;
    this.walk(cut, -1, this.far);
    this.settle(chain, cut, this.far);
    this.relabel(cut, -1, chain);
    this.tally(worst, 1);
    this.tally(chain, 1);
    return true;
  }

  /** Takes an emptied chain off the list; the last one gets its number. */
  private drop(chain: number): void {
    const last = --this.chains;
    if (chain === last) return;
    this.relabel(this.endA[last]!, -1, chain);
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
        const next = this.linkA[at] === before ? this.linkB[at]! : this.linkA[at]!;
        before = at;
        at = next;
      }
    }
    start[this.chains] = written;
    return { order, start };
  }
}
