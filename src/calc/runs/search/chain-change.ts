import { ChainWalk } from './chain-walk';
import type { PathCover } from './path-cover';

/**
 * One change of a cover: an end is led on to a neighbour, and the neighbour is cut off from one of its links. On one chain the
 * end so moves elsewhere ('turn'); between two chains the far part of the other one stays behind ('exchange'); where the
 * neighbour is an end and nothing is to be cut the two become one ('join'). A change is proposed, weighed and, if it
 * is taken, committed, before another one is proposed.
 */
export class ChainChange {
  excess = 0;
  high = 0;
  bends = 0;
  private kind: 'turn' | 'exchange' | 'join' = 'turn';
  private chain = 0;
  private other = 0;
  private from = 0;
  private to = 0;
  private cut = 0;
  /** The end of the chain that stays. */
  private fixed = 0;
  /** Where the chain ends after a join. */
  private joined = 0;
  private readonly cover: PathCover;
  private readonly rectangle: boolean;
  /** The part that stays behind, and the part that comes over. */
  private readonly far: ChainWalk;
  private readonly near: ChainWalk;

  constructor(cover: PathCover) {
    this.cover = cover;
    this.rectangle = cover.region.limits.counting === 'rectangle';
    this.far = new ChainWalk(cover.region, cover.links);
    this.near = new ChainWalk(cover.region, cover.links);
  }

  /** Leads the end `from` on to `to`; `second` says which of its two links `to` is cut off from. False where nothing changes. */
  propose(from: number, to: number, second: boolean, joining: boolean): boolean {
    const { cover } = this;
    const { links } = cover;
    if (links.has(from, to)) return false;
    this.from = from;
    this.to = to;
    this.chain = cover.chainOf[from]!;
    this.other = cover.chainOf[to]!;
    this.fixed = cover.otherEnd(this.chain, from);
    if (this.chain === this.other) this.weighTurn();
    else if (joining && links.isEnd(to)) this.weighJoin();
    else {
      const a = links.a[to]!;
      const b = links.b[to]!;
      if (a < 0 && b < 0) return false;
      this.cut = a < 0 ? b : b < 0 ? a : second ? a : b;
      this.weighExchange();
    }
    return true;
  }

  /** Makes the change proposed last. */
  commit(): void {
    const { cover, kind, chain, other, from, to, cut, fixed } = this;
    const { links } = cover;
    cover.unsettle(chain);
    if (kind === 'turn') {
      links.cut(to, cut);
      links.link(from, to);
      cover.settleTurned(chain, cut, fixed);
      return;
    }
    cover.unsettle(other);
    if (kind === 'exchange') {
      links.cut(to, cut);
      cover.relabel(this.near.last, chain);
      links.link(from, to);
      cover.settle(other, cut, this.far);
      cover.settle(chain, fixed, this.near);
      return;
    }
    links.link(from, to);
    this.near.go(fixed, -1);
    cover.settle(chain, fixed, this.near);
    cover.drop(other);
  }

  /** Both ends after the change of the chain and of the other one; -1 for one that stays as it is or goes. */
  endsAfter(into: Int32Array): void {
    into[0] = this.fixed;
    into[1] = this.kind === 'turn' ? this.cut : this.kind === 'join' ? this.joined : this.near.last;
    into[2] = this.kind === 'exchange' ? this.cut : -1;
    into[3] = this.kind === 'exchange' ? this.far.last : -1;
  }

  private weighTurn(): void {
    const { cover, from, to, fixed } = this;
    let before = -1;
    let at = from;
    while (at !== to) {
      const next = cover.links.onward(at, before);
      before = at;
      at = next;
    }
    this.kind = 'turn';
    this.cut = before;
    this.excess = 0;
    this.high = cover.highOf(before, fixed) - cover.highOf(from, fixed);
    this.bends = this.changeOfBends();
  }

  private weighExchange(): void {
    const { cover, from, to, cut, chain, other, far, near, fixed } = this;
    this.kind = 'exchange';
    far.go(cut, to);
    if (this.rectangle) {
      near.go(to, cut);
      cover.widen(near, chain);
    } else {
      near.last = cover.otherEnd(other, far.last);
      near.pixels = cover.pixels[chain]! + cover.pixels[other]! - far.pixels;
    }
    near.count = cover.count[chain]! + cover.count[other]! - far.count;
    this.excess =
      cover.excessOf(near.pixels, near.count) +
      cover.excessOf(far.pixels, far.count) -
      cover.excessOn(chain) -
      cover.excessOn(other);
    this.high =
      cover.highOf(fixed, near.last) +
      cover.highOf(cut, far.last) -
      cover.highOf(from, fixed) -
      cover.highOf(cover.endA[other]!, cover.endB[other]!);
    this.bends = this.changeOfBends();
  }

  /** A join is wanted for its own sake: what it overloads does not weigh. */
  private weighJoin(): void {
    const { cover, from, to, other, fixed } = this;
    this.kind = 'join';
    this.joined = cover.otherEnd(other, to);
    this.excess = 0;
    this.high = cover.highOf(fixed, this.joined) - cover.highOf(from, fixed) - cover.highOf(to, this.joined);
    this.bends = this.bend(from, cover.links.onward(from, -1), to) + this.bend(to, cover.links.onward(to, -1), from);
  }

  private changeOfBends(): number {
    const { from, to, cut } = this;
    const { links } = this.cover;
    const kept = links.onward(to, cut);
    return (
      this.bend(from, links.onward(from, -1), to) +
      this.bend(to, kept, from) -
      this.bend(to, kept, cut) -
      this.bend(cut, links.onward(cut, to), to)
    );
  }

  /** 1 where a run that comes from `one` leaves `cell` to `two` in another direction; -1 for none there. */
  private bend(cell: number, one: number, two: number): 0 | 1 {
    if (one < 0 || two < 0) return 0;
    const { column, row } = this.cover.region;
    return column[one]! + column[two]! === 2 * column[cell]! && row[one]! + row[two]! === 2 * row[cell]! ? 0 : 1;
  }
}
