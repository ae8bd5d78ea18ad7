import { greatestCommonDivisor } from '../largest-divisor';
import type { Region } from '../region';

/** The largest number a state keeps exactly. */
const LARGEST = 2 ** 31 - 1;

/**
 * What chains on a frontier carry, as numbers of which less is better: pixels and panels, or the box on the canvas (its left
 * and top edges negative) and panels. Panels are 0 throughout where the pixels alone say when a chain is full. A cell counts
 * from when its chain is led to it, so that no chain is led where it does not fit. Field 0 of a chain is left to the search;
 * the last field, what the chain's panels add up to in units of load, is for bounds and makes no chain better or worse.
 */
export class OpenLoads {
  /** Numbers a chain, field 0 included; those of them that say which chain is better, field 0 included. */
  readonly fields: number;
  readonly compared: number;
  /** Whether all fit into 32 bits; the region can't be searched exactly where not. */
  readonly exact: boolean;
  /** Pixels that a unit of load stands for. */
  readonly unit: number;
  /** Units of each cell. */
  readonly units: Int32Array;
  private readonly rectangle: boolean;
  private readonly usable: number;
  private readonly panelsMost: number;
  private readonly countPanels: 0 | 1;
  private readonly region: Region;

  constructor(region: Region) {
    const { limits } = region;
    this.region = region;
    this.rectangle = limits.counting === 'rectangle';
    this.compared = this.rectangle ? 6 : 3;
    this.fields = this.compared + 1;
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
    this.exact = sum / unit <= LARGEST && edge <= LARGEST;
    this.units = Int32Array.from(region.pixels, (each) => each / unit);
    this.usable = this.rectangle ? limits.usablePixels : Math.floor(limits.usablePixels / unit);
    this.panelsMost = limits.panelsMost;
    this.countPanels = Math.floor(limits.usablePixels / least) > limits.panelsMost ? 1 : 0;
  }

  /** A chain of one cell. */
  begin(state: Int32Array, at: number, cell: number): void {
    if (this.rectangle) {
      state[at + 1] = -this.region.left[cell]!;
      state[at + 2] = this.region.right[cell]!;
      state[at + 3] = -this.region.top[cell]!;
      state[at + 4] = this.region.bottom[cell]!;
    } else state[at + 1] = this.units[cell]!;
    state[at + this.compared - 1] = this.countPanels;
    state[at + this.compared] = this.units[cell]!;
  }

  /** Leads a chain to a cell; whether it still fits. */
  lead(state: Int32Array, at: number, cell: number): boolean {
    const panels = at + this.compared - 1;
    state[panels]! += this.countPanels;
    if (this.rectangle) {
      const { left, right, top, bottom } = this.region;
      state[at + 1] = Math.max(state[at + 1]!, -left[cell]!);
      state[at + 2] = Math.max(state[at + 2]!, right[cell]!);
      state[at + 3] = Math.max(state[at + 3]!, -top[cell]!);
      state[at + 4] = Math.max(state[at + 4]!, bottom[cell]!);
    } else state[at + 1]! += this.units[cell]!;
    return this.fits(state, at);
  }

  /** Takes a cell that a chain was led to. */
  take(state: Int32Array, at: number, cell: number): void {
    state[at + this.compared]! += this.units[cell]!;
  }

  /** Makes the chain at `at`, led to a cell, one with that at `other`, led to the same; whether they fit. The cell is still to be taken. */
  join(state: Int32Array, at: number, other: number, cell: number): boolean {
    const panels = this.compared - 1;
    if (this.rectangle) {
      for (let field = 1; field < 5; field++) state[at + field] = Math.max(state[at + field]!, state[other + field]!);
    } else state[at + 1]! += state[other + 1]! - this.units[cell]!;
    state[at + panels]! += state[other + panels]! - this.countPanels;
    state[at + this.compared]! += state[other + this.compared]!;
    return this.fits(state, at);
  }

  /** What the panels of a chain add up to, in units. */
  unitsOn(state: Int32Array, at: number): number {
    return state[at + this.compared]!;
  }

  private fits(state: Int32Array, at: number): boolean {
    if (state[at + this.compared - 1]! > this.panelsMost) return false;
    if (!this.rectangle) return state[at + 1]! <= this.usable;
    return (state[at + 1]! + state[at + 2]!) * (state[at + 3]! + state[at + 4]!) <= this.usable;
  }
}
