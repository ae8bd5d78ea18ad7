import type { CellLinks } from './cell-links';
import type { Region } from './region';

/** What a walk along a chain has met: its last cell, panels, and the box on the canvas or the pixels. */
export class ChainWalk {
  last = -1;
  count = 0;
  /** Pixels by the region's way of counting. */
  pixels = 0;
  left = 0;
  right = 0;
  top = 0;
  bottom = 0;
  private readonly region: Region;
  private readonly links: CellLinks;
  private readonly rectangle: boolean;

  constructor(region: Region, links: CellLinks) {
    this.region = region;
    this.links = links;
    this.rectangle = region.limits.counting === 'rectangle';
  }

  /** Walks from `cell` away from `from` (-1: `cell` is an end). */
  go(cell: number, from: number): void {
    const { a, b } = this.links;
    const { pixels, left, right, top, bottom } = this.region;
    this.count = 0;
    this.pixels = 0;
    this.left = Number.POSITIVE_INFINITY;
    this.right = 0;
    this.top = Number.POSITIVE_INFINITY;
    this.bottom = 0;
    let before = from;
    let at = cell;
    while (at >= 0) {
      this.count++;
      this.last = at;
      if (this.rectangle) {
        if (left[at]! < this.left) this.left = left[at]!;
        if (right[at]! > this.right) this.right = right[at]!;
        if (top[at]! < this.top) this.top = top[at]!;
        if (bottom[at]! > this.bottom) this.bottom = bottom[at]!;
      } else this.pixels += pixels[at]!;
      const next = a[at] === before ? b[at]! : a[at]!;
      before = at;
      at = next;
    }
    if (this.rectangle) this.pixels = (this.right - this.left) * (this.bottom - this.top);
  }

  /** Takes another box into its own. */
  widen(left: number, right: number, top: number, bottom: number): void {
    this.left = Math.min(this.left, left);
    this.right = Math.max(this.right, right);
    this.top = Math.min(this.top, top);
    this.bottom = Math.max(this.bottom, bottom);
    this.pixels = (this.right - this.left) * (this.bottom - this.top);
  }
}
