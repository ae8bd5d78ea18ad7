import type { Region } from './region';

/** Pixels that a growing run counts for, by the way of counting. */
export class RunExtent {
  pixels = 0;
  panels = 0;
  private left = 0;
  private right = 0;
  private top = 0;
  private bottom = 0;
  private readonly rectangle: boolean;

  private readonly region: Region;

  constructor(region: Region) {
    this.region = region;
    this.rectangle = region.limits.counting === 'rectangle';
  }

  clear(): void {
    this.pixels = 0;
    this.panels = 0;
    this.left = Number.POSITIVE_INFINITY;
    this.right = 0;
    this.top = Number.POSITIVE_INFINITY;
    this.bottom = 0;
  }

  add(cell: number): void {
    const { region } = this;
    this.panels++;
    if (!this.rectangle) {
      this.pixels += region.pixels[cell]!;
      return;
    }
    this.left = Math.min(this.left, region.left[cell]!);
    this.right = Math.max(this.right, region.right[cell]!);
    this.top = Math.min(this.top, region.top[cell]!);
    this.bottom = Math.max(this.bottom, region.bottom[cell]!);
    this.pixels = (this.right - this.left) * (this.bottom - this.top);
  }

  fits(): boolean {
    const { usablePixels, panelsMost } = this.region.limits;
    return this.pixels <= usablePixels && this.panels <= panelsMost;
  }
}
