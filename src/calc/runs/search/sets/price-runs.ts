import type { RunSets } from './run-sets';

/** What a cover is weighed by. */
export interface RunCost {
  readonly perRun: number;
  readonly perHigh: number;
  /** Ends above reach that are allowed: `perHigh` is then brought to what suits. Null: `perHigh` holds. */
  readonly highMost: number | null;
}

export interface PriceAim {
  /** Cost of the best cover known: no bound is above it. */
  readonly target: number;
  /** Bound at which the prices are good enough. */
  readonly enough: number;
}

export interface RunPrices {
  /** No cover costs less. */
  readonly bound: number;
  /** What every set costs above the prices of its cells: never below 0, up to rounding. What a cover costs above `bound` is their sum. */
  readonly dear: Float64Array;
}

const ROUNDS = 500;
/** Rounds without gain after which steps become smaller, by which share, and at which share they end. */
const PATIENCE = 15;
const SHRINK = 0.6;
const LEAST_SHARE = 0.02;
/** What counts as gain, in shares of what is aimed at. */
const GAIN = 0.001;

/**
 * Prices cells so that no run is worth more than it costs and all cells together are worth as much as may be: that is a bound
 * of what covers cost. Prices of what no run would cover rise, those of what several would cover fall. Source: Lagrangian
 * relaxation by subgradients, M. L. Fisher, "The Lagrangian relaxation method for solving integer programming problems",
 * Management Science 27 (1981) (from memory).
 */
export function priceRuns(sets: RunSets, from: number, cost: RunCost, { target, enough }: PriceAim): RunPrices {
  const market = new Market(sets, from, cost);
  let share = 1;
  let stale = 0;
  for (let round = 0; round < ROUNDS && share > LEAST_SHARE; round++) {
    const before = market.bound;
    const sum = market.ask();
    if (market.bound >= enough) break;
    stale = sum > before + GAIN * Math.abs(target) ? 0 : stale + 1;
    if (stale > PATIENCE) {
      stale = 0;
      share *= SHRINK;
      market.goBack();
    } else if (!market.move(share * (target - sum))) break;
  }
  return { bound: market.bound, dear: market.dear() };
}

class Market {
  bound = Number.NEGATIVE_INFINITY;
  private readonly sets: RunSets;
  private readonly cost: RunCost;
  private readonly prices: Float64Array;
  private readonly covered: Int32Array;
  private readonly allowed: Float64Array;
  private perHigh: number;
  private highs = 0;
  /** What gave the best bound: prices asked, those that no run is worth more than, and the cost of an end above reach. */
  private readonly bestPrices: Float64Array;
  private readonly bestAllowed: Float64Array;
  private bestPerHigh: number;

  constructor(sets: RunSets, from: number, cost: RunCost) {
    const size = sets.firstAt.length - 1;
    this.sets = sets;
    this.cost = cost;
    this.prices = new Float64Array(size).fill(from);
    this.covered = new Int32Array(size);
    this.allowed = new Float64Array(size);
    this.perHigh = cost.perHigh;
    this.bestPrices = this.prices.slice();
    this.bestAllowed = this.prices.slice();
    this.bestPerHigh = cost.perHigh;
  }

  /** The bound at the present prices; what covers the cells then. */
  ask(): number {
    const { prices, covered, allowed } = this;
    const { start, cells, high, firstAt } = this.sets;
    covered.fill(0);
    this.highs = 0;
    let sum = 0;
    for (let cell = 0; cell < prices.length; cell++) {
      let least = 0;
      let cheapest = -1;
      for (let set = firstAt[cell]!; set < firstAt[cell + 1]!; set++) {
        let left = this.cost.perRun + this.perHigh * high[set]!;
        for (let at = start[set]!; at < start[set + 1]!; at++) left -= prices[cells[at]!]!;
        if (left >= least) continue;
        least = left;
        cheapest = set;
      }
      // A cell is the lowest of one run at most, so that no cover gains more on it.
      allowed[cell] = prices[cell]! + least;
      sum += allowed[cell]!;
      if (cheapest < 0) continue;
      this.highs += high[cheapest]!;
      for (let at = start[cheapest]!; at < start[cheapest + 1]!; at++) covered[cells[at]!]!++;
    }
    if (this.cost.highMost !== null) sum -= this.perHigh * this.cost.highMost;
    if (sum > this.bound) {
      this.bound = sum;
      this.bestPrices.set(prices);
      this.bestAllowed.set(allowed);
      this.bestPerHigh = this.perHigh;
    }
    return sum;
  }

  goBack(): void {
    this.prices.set(this.bestPrices);
    this.perHigh = this.bestPerHigh;
  }

  /** Moves prices towards a bound that is `rise` higher; false where every cell is covered once. */
  move(rise: number): boolean {
    const { prices, covered } = this;
    const { highMost } = this.cost;
    const tooHigh = highMost === null ? 0 : this.highs - highMost;
    let norm = tooHigh ** 2;
    for (const times of covered) norm += (1 - times) ** 2;
    if (norm === 0) return false;
    const step = rise / norm;
    for (let cell = 0; cell < prices.length; cell++) prices[cell]! += step * (1 - covered[cell]!);
    this.perHigh = Math.max(0, this.perHigh + step * tooHigh);
    return true;
  }

  dear(): Float64Array {
    const { start, cells, high, count } = this.sets;
    const dear = new Float64Array(count);
    for (let set = 0; set < count; set++) {
      let left = this.cost.perRun + this.bestPerHigh * high[set]!;
      for (let at = start[set]!; at < start[set + 1]!; at++) left -= this.bestAllowed[cells[at]!]!;
      dear[set] = left;
    }
    return dear;
  }
}
