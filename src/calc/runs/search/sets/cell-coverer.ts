import type { RunSets } from './run-sets';

export interface CoverAim {
  /** Ends above reach that may not be exceeded, and sets where these are as many. */
  readonly high: number;
  readonly runs: number;
  /** Sums of what sets cost above prices, by ends above reach and by runs, that may not be exceeded. */
  readonly dearHigh: number;
  readonly dearRuns: number;
  /** Whether, of ways that are too many, those are kept that cost least by ends above reach; else by runs. */
  readonly byHigh: boolean;
  /** Ways kept at a cell, at most. */
  readonly beam: number;
}

export interface CellCover {
  readonly sets: readonly number[];
  readonly high: number;
}

/** What is covered beyond a cell is kept as two halves of so many bits. */
const HALF = 26;
const FULL = 2 ** HALF - 1;

/**
 * Covers cells by sets that lie among them, with fewest ends above reach and then fewest sets: cell by cell, of all ways to
 * have covered the same cells it keeps the best, and among equals it draws. Exact as long as it did not have to `cut` ways.
 */
export class CellCoverer {
  dearHigh: Float64Array;
  dearRuns: Float64Array;
  /** Whether the last cover left out ways that were within the aim. */
  cut = false;
  /** States looked at in all. */
  states = 0;
  private readonly sets: RunSets;
  private readonly panelsMost: number;
  private readonly randomBits: () => number;
  private readonly numberOf: Int32Array;
  /** Cells of the sets that lie inside, as bits from the lowest one on. */
  private readonly near: Int32Array;
  private readonly far: Int32Array;
  private readonly ways: Ways;

  /** `panelsMost`: cells of a set at most. */
  constructor(sets: RunSets, panelsMost: number, randomBits: () => number) {
    this.sets = sets;
    this.panelsMost = panelsMost;
    this.randomBits = randomBits;
    this.dearHigh = new Float64Array(sets.count);
    this.dearRuns = new Float64Array(sets.count);
    this.numberOf = new Int32Array(sets.firstAt.length - 1).fill(-1);
    this.near = new Int32Array(sets.count);
    this.far = new Int32Array(sets.count);
    this.ways = new Ways();
  }

  /** The best cover of `cells`, which ascend; null where none within the aim was found. */
  cover(cells: readonly number[], aim: CoverAim): CellCover | null {
    this.cut = false;
    const inside = this.setsInside(cells);
    const { ways } = this;
    const layers = Array.from({ length: cells.length + 1 }, () => new Map<number, number>());
    ways.clear();
    layers[0]!.set(0, 0);
    for (let cell = 0; cell < cells.length; cell++) {
      for (const way of this.kept(layers[cell]!, aim)) {
        for (const set of inside[cell]!) this.goOn(layers, cell, way, set, aim);
      }
      layers[cell]!.clear();
    }
    this.states += ways.count;
    const last = layers[cells.length]!.values().next().value;
    if (last === undefined) return null;
    const sets: number[] = [];
    for (let way = last; way > 0; way = ways.parent[way]!) sets.push(ways.by[way]!);
    return { sets, high: ways.high[last]! };
  }

  private kept(layer: ReadonlyMap<number, number>, aim: CoverAim): Iterable<number> {
    if (layer.size <= aim.beam) return layer.values();
    this.cut = true;
    const { dearHigh, dearRuns } = this.ways;
    return [...layer.values()]
      .sort((a, b) => (aim.byHigh ? dearHigh[a]! - dearHigh[b]! : 0) || dearRuns[a]! - dearRuns[b]!)
      .slice(0, aim.beam);
  }

  /** Adds a set, whose lowest cell is `cell`, to a way. */
  private goOn(layers: readonly Map<number, number>[], cell: number, way: number, set: number, aim: CoverAim): void {
    const { ways, sets } = this;
    if ((this.near[set]! & ways.near[way]!) !== 0 || (this.far[set]! & ways.far[way]!) !== 0) return;
    const high = ways.high[way]! + sets.high[set]!;
    const dearHigh = ways.dearHigh[way]! + this.dearHigh[set]!;
    const dearRuns = ways.dearRuns[way]! + this.dearRuns[set]!;
    if (high > aim.high || dearHigh > aim.dearHigh || dearRuns > aim.dearRuns) return;
    const runs = ways.runs[way]! + 1;
    const filled = ways.filled[way]! + sets.start[set + 1]! - sets.start[set]!;
    const left = layers.length - 1 - filled;
    if (high === aim.high && runs + Math.ceil(left / this.panelsMost) > aim.runs) return;
    // The bits of what is covered without a gap are left behind.
    let next = cell;
    let near = this.near[set]! | ways.near[way]!;
    let far = this.far[set]! | ways.far[way]!;
    if (near === FULL) {
      next += HALF;
      near = far;
      far = 0;
    }
    const ones = 31 - Math.clz32(~near & -~near);
    next += ones;
    near = (near >>> ones) | ((far << (HALF - ones)) & FULL);
    far >>>= ones;
    const layer = layers[next]!;
    const key = far * 2 ** HALF + near;
    const known = layer.get(key);
    if (known !== undefined) {
      const order = high - ways.high[known]! || runs - ways.runs[known]!;
      if (order > 0 || (order === 0 && (this.randomBits() & 1) === 0)) return;
    }
    const at = known ?? ways.add();
    if (known === undefined) layer.set(key, at);
    ways.parent[at] = way;
    ways.by[at] = set;
    ways.high[at] = high;
    ways.runs[at] = runs;
    ways.filled[at] = filled;
    ways.near[at] = near;
    ways.far[at] = far;
    ways.dearHigh[at] = dearHigh;
    ways.dearRuns[at] = dearRuns;
  }

  /** Sets that lie among the cells, by their lowest one. One too long for its bits is left out, and said to be cut. */
  private setsInside(cells: readonly number[]): number[][] {
    const { numberOf, sets, near, far } = this;
    cells.forEach((cell, i) => {
      numberOf[cell] = i;
    });
    const inside = cells.map((cell, i) => {
      const found: number[] = [];
      for (let set = sets.firstAt[cell]!; set < sets.firstAt[cell + 1]!; set++) {
        near[set] = 0;
        far[set] = 0;
        let at = sets.start[set]!;
        for (; at < sets.start[set + 1]!; at++) {
          const number = numberOf[sets.cells[at]!]!;
          const bit = number - i;
          if (number >= 0 && bit >= 2 * HALF) this.cut = true;
          if (number < 0 || bit >= 2 * HALF) break;
          if (bit < HALF) near[set]! |= 1 << bit;
          else far[set]! |= 1 << (bit - HALF);
        }
        if (at === sets.start[set + 1]!) found.push(set);
      }
      return found;
    });
    for (const cell of cells) numberOf[cell] = -1;
    return inside;
  }
}

/** Ways to have covered cells, column by column; way 0 has covered none. */
class Ways {
  count = 1;
  parent = new Int32Array(1024);
  by = new Int32Array(1024);
  high = new Int32Array(1024);
  runs = new Int32Array(1024);
  filled = new Int32Array(1024);
  near = new Int32Array(1024);
  far = new Int32Array(1024);
  dearHigh = new Float64Array(1024);
  dearRuns = new Float64Array(1024);

  clear(): void {
    this.count = 1;
  }

  add(): number {
    if (this.count === this.parent.length) this.grow();
    return this.count++;
  }

  private grow(): void {
    const whole = (old: Int32Array) => {
      const wide = new Int32Array(old.length * 2);
      wide.set(old);
      return wide;
    };
    const real = (old: Float64Array) => {
      const wide = new Float64Array(old.length * 2);
      wide.set(old);
      return wide;
    };
    this.parent = whole(this.parent);
    this.by = whole(this.by);
    this.high = whole(this.high);
    this.runs = whole(this.runs);
    this.filled = whole(this.filled);
    this.near = whole(this.near);
    this.far = whole(this.far);
    this.dearHigh = real(this.dearHigh);
    this.dearRuns = real(this.dearRuns);
  }
}
