import { greatestCommonDivisor } from '../largest-divisor';
import type { Region } from '../region';

/** The largest number a state keeps exactly. */
const LARGEST = 2 ** 31 - 1;

/**
 * What chains on a frontier carry, as numbers of which less is better: pixels and panels, or the box on the canvas (its left
 * and top edges negative) and panels. Panels are 0 throughout where the pixels alone say when a chain is full. Field 0 of a
 * chain is left to the search.
 */
export class OpenLoads {
  /** Numbers a chain, field 0 included. */
  readonly fields: number;
  /** Whether all fit into 32 bits; the region can't be searched exactly where not. */
  readonly exact: boolean;
  private readonly rectangle: boolean;
  private readonly usable: number;
  private readonly panelsMost: number;
  private readonly countPanels: 0 | 1;
  private readonly pixels: Int32Array;
  private readonly region: Region;
  /** Pixels that a unit of load stands for. */
  readonly unit: number;

  constructor(region: Region) {
    const { limits } = region;
    this.region = region;
    this.rectangle = limits.counting === 'rectangle';
    this.fields = this.rectangle ? 6 : 3;
    let unit = 0;
    let sum = 0;
    let least = Number.POSITIVE_INFINITY;
    let edge = 0;
    for (let cell = 0; cell < region.size; cell++) {
      unit = greatestCommonDivisor(unit, region.pixels[cell]!);
      sum += region.pixels[cell]!;
      least = Math.min(least, region.pixels[cell]!);
      edge = Math.max(edge, region.right[cell]!, region.bottom[cell]!);
    }
    this.unit = unit;
    this.exact = (this.rectangle ? edge : sum / unit) <= LARGEST;
    this.pixels = Int32Array.from(region.pixels, (each) => each / unit);
    this.usable = this.rectangle ? limits.usablePixels : Math.floor(limits.usablePixels / unit);
    this.panelsMost = limits.panelsMost;
    this.countPanels = Math.floor(limits.usablePixels / least) > limits.panelsMost ? 1 : 0;
  }

  /** A chain of one cell. */
  begin(state: Int32Array, at: number, cell: number): void {
    state.fill(0, at + 1, at + this.fields);
    if (this.rectangle) {
      state[at + 1] = -this.region.left[cell]!;
      state[at + 2] = this.region.right[cell]!;
      state[at + 3] = -this.region.top[cell]!;
      state[at + 4] = this.region.bottom[cell]!;
      state[at + 5] = this.countPanels;
    } else {
      state[at + 1] = this.pixels[cell]!;
      state[at + 2] = this.countPanels;
    }
  }

  /** Adds a cell to a chain; whether it still fits. */
  add(state: Int32Array, at: number, cell: number): boolean {
    if (this.rectangle) {
      const { left, right, top, bottom } = this.region;
      state[at + 1] = Math.max(state[at + 1]!, -left[cell]!);
      state[at + 2] = Math.max(state[at + 2]!, right[cell]!);
      state[at + 3] = Math.max(state[at + 3]!, -top[cell]!);
      state[at + 4] = Math.max(state[at + 4]!, bottom[cell]!);
      state[at + 5]! += this.countPanels;
      const area = (state[at + 1]! + state[at + 2]!) * (state[at + 3]! + state[at + 4]!);
      return area <= this.usable && state[at + 5]! <= this.panelsMost;
    }
    state[at + 1]! += this.pixels[cell]!;
    state[at + 2]! += this.countPanels;
    return state[at + 1]! <= this.usable && state[at + 2]! <= this.panelsMost;
  }

  /** Adds the chain at `other` and a cell between the two to the chain at `at`; whether they fit. */
  join(state: Int32Array, at: number, other: number, cell: number): boolean {
    if (this.rectangle) {
      for (let field = 1; field < 5; field++) state[at + field] = Math.max(state[at + field]!, state[other + field]!);
      state[at + 5]! += state[other + 5]!;
    } else {
      state[at + 1]! += state[other + 1]!;
      state[at + 2]! += state[other + 2]!;
    }
    return this.add(state, at, cell);
  }

  /** Pixels on a chain; 0 where its rectangle counts and says nothing of its panels. */
  pixelsOn(state: Int32Array, at: number): number {
    return this.rectangle ? 0 : state[at + 1]! * this.unit;
  }
}
