import { leastChains, type MostOnARun } from '../bounds/least-chains';
import type { Chains } from '../chains';
import { frontierOrder } from '../exact/frontier-order';
import { createRandomBits } from '../random-bits';
import type { Region } from '../region';
import { subRegion } from '../sub-region';
import { CellCoverer } from './cell-coverer';
import { priceRuns } from './price-runs';
import { listRunSets, type RunSets } from './run-sets';
import { type CoverWindow, SetCover } from './set-cover';

export interface SetsAim {
  /** Ends above reach that no cover can do without. */
  readonly highLeast: number;
  /** Stop at so many runs with no end above reach; 0: go on to the least possible. */
  readonly enough: number;
  /** States looked at, at most, about. */
  readonly states: number;
}

export interface SetsAnswer {
  readonly chains: Chains;
  readonly high: number;
  readonly count: number;
  /** No cover with at most as many ends above reach has fewer runs. */
  readonly least: number;
  /** Whether no cover has fewer ends above reach, or as many and fewer runs. */
  readonly proved: boolean;
  readonly states: number;
}

/** Chains walked at most; with more, sets are too many. */
const CHAINS_MOST = 60_000;

/** Cells of windows, one after the other, and ways kept in each. */
const WINDOWS = [40, 70, 100] as const;
const WINDOW_BEAM = 30;
/** What preparing a window costs, in states. */
const STATES_A_WINDOW = 20;
/** Windows without gain after which the cover counts as settled, and cells that are then taken apart. */
const SETTLED = 40;
const APART = 20;
/** Ways kept at first when the whole region is covered at once. */
const WHOLE_BEAM = 100;
/** Shares of the states: before cells are priced, before the region is first covered at once, and between that and the next time. */
const UNPRICED = 0.03;
const FIRST = 0.1;
const BETWEEN = 0.05;

/** Rounding that sums of prices are allowed. */
const ROUNDING = 1e-6;

/**
 * The cover of a region of short runs by fewest ends above reach, then fewest runs, from a list of all sets that a run can
 * hold: cells are priced, and sets that cost much more than their cells are worth can be left aside. Windows, then the whole
 * region, are so covered anew, at the least the prices allow first. Null where sets are too many.
 */
export function fewestSets(region: Region, most: MostOnARun, start: Chains, aim: SetsAim): SetsAnswer | null {
  const { cells } = frontierOrder(region);
  const ordered = subRegion(region, cells);
  const sets = listRunSets(ordered, CHAINS_MOST);
  if (sets === null) return null;
  const numberOf = new Int32Array(region.size);
  cells.forEach((cell, i) => {
    numberOf[cell] = i;
  });
  const from = { order: start.order.map((cell) => numberOf[cell]!), start: start.start };
  const answer = new SetsSearch(ordered, most, sets, from, aim).run();
  return { ...answer, chains: { ...answer.chains, order: answer.chains.order.map((cell) => cells[cell]!) } };
}

class SetsSearch {
  private readonly region: Region;
  private readonly most: MostOnARun;
  private readonly aim: SetsAim;
  private readonly sets: RunSets;
  private readonly cover: SetCover;
  private readonly coverer: CellCoverer;
  private readonly randomBits = createRandomBits(0x68bc21eb);
  private highLeast: number;
  private runsLeast = 0;
  private priced = false;
  private windows = 0;
  /** The best so far. */
  private best: Int32Array;
  private high: number;
  private runs: number;

  constructor(region: Region, most: MostOnARun, sets: RunSets, start: Chains, aim: SetsAim) {
    this.region = region;
    this.most = most;
    this.aim = aim;
    this.sets = sets;
    this.cover = new SetCover(region, sets, start);
    this.coverer = new CellCoverer(sets, most.panels, this.randomBits);
    this.highLeast = aim.highLeast;
    this.best = this.cover.setOf.slice();
    this.high = this.cover.high;
    this.runs = this.cover.runs;
  }

  run(): SetsAnswer {
    const { aim } = this;
    this.boundRuns();
    this.settle(UNPRICED * aim.states);
    this.keepBest();
    if (!this.hasArrived()) this.price();
    this.priced = true;
    this.settle(FIRST * aim.states);
    if (this.keepBest() && !this.hasArrived()) this.price();
    for (let beam = WHOLE_BEAM; !this.hasArrived() && this.coverer.states < aim.states; beam *= 2) {
      this.coverWhole(beam);
      const until = Math.min(aim.states, this.coverer.states + BETWEEN * aim.states);
      while (!this.hasArrived() && this.coverer.states < until) this.kick(until);
    }
    this.cover.restore(this.best);
    const proved = this.high <= this.highLeast && this.runs <= this.runsLeast;
    const { high, runs, runsLeast, coverer } = this;
    return { chains: this.cover.chains(), high, count: runs, least: runsLeast, proved, states: coverer.states };
  }

  private hasArrived(): boolean {
    const { high, runs } = this.cover;
    if (high === 0 && runs <= this.aim.enough) return true;
    return high <= this.highLeast && runs <= this.runsLeast;
  }

  /** Keeps the cover where it is as good as the best, else goes back to that; whether it has fewer ends above reach or runs. */
  private keepBest(): boolean {
    const { cover } = this;
    const order = cover.high - this.high || cover.runs - this.runs;
    if (order > 0) {
      cover.restore(this.best);
      return false;
    }
    if (cover.high < this.high) this.boundRuns();
    this.best = cover.setOf.slice();
    this.high = cover.high;
    this.runs = cover.runs;
    return order < 0;
  }

  /** The bound on runs holds for the ends above reach that there are. */
  private boundRuns(): void {
    this.runsLeast = leastChains(this.region, this.cover.high, this.most);
  }

  private price(): void {
    const { cover, sets, coverer, region } = this;
    const { high, runs } = cover;
    const byHigh = { perRun: 0, perHigh: 1, highMost: null };
    const forHigh = priceRuns(sets, 1 / this.most.panels, byHigh, { target: high, enough: high - 0.02 });
    coverer.dearHigh = forHigh.dear;
    this.highLeast = Math.max(this.highLeast, Math.ceil(forHigh.bound - ROUNDING));
    const byRuns = { perRun: 1, perHigh: 1, highMost: high };
    const aim = { target: runs, enough: runs - 1 + ROUNDING };
    const forRuns = priceRuns(sets, runs / region.size, byRuns, aim);
    coverer.dearRuns = forRuns.dear;
    this.runsLeast = Math.max(this.runsLeast, Math.ceil(forRuns.bound - ROUNDING));
  }

  /** Covers windows anew until that gains no more. */
  private settle(until: number): void {
    let stale = 0;
    while (!this.hasArrived() && this.coverer.states < until && stale < SETTLED) {
      stale = this.rewireWindow() ? 0 : stale + 1;
    }
  }

  private rewireWindow(): boolean {
    const { coverer, cover } = this;
    const size = WINDOWS[this.windows % WINDOWS.length]!;
    const window = cover.windowAt(this.dearCell(), size, this.windows);
    this.windows++;
    coverer.states += STATES_A_WINDOW;
    const dear = this.dearOf(window);
    // Where prices allow no end above reach less, runs count; else more runs may do with fewer of them.
    const byHigh = dear.high >= 1;
    const found = coverer.cover(window.cells, {
      high: window.high,
      runs: window.sets.size,
      dearHigh: this.priced ? dear.high : Number.POSITIVE_INFINITY,
      dearRuns: this.priced && !byHigh ? dear.runs : Number.POSITIVE_INFINITY,
      byHigh,
      beam: WINDOW_BEAM,
    });
    if (found === null) return false;
    cover.replace(window, found.sets);
    return (found.high - window.high || found.sets.length - window.sets.size) < 0;
  }

  /** A cell, or of two or three the one whose set costs most above the prices, in turn. */
  private dearCell(): number {
    const { region, coverer } = this;
    const dear = (cell: number) => {
      const set = this.cover.setOf[cell]!;
      return coverer.dearHigh[set]! + coverer.dearRuns[set]!;
    };
    let picked = this.randomBits() % region.size;
    for (let i = 0; i < this.windows % 3; i++) {
      const other = this.randomBits() % region.size;
      if (dear(other) > dear(picked)) picked = other;
    }
    return picked;
  }

  private dearOf({ sets }: CoverWindow): { high: number; runs: number } {
    let high = ROUNDING;
    let runs = ROUNDING;
    for (const set of sets) {
      high += this.coverer.dearHigh[set]!;
      runs += this.coverer.dearRuns[set]!;
    }
    return { high, runs };
  }

  /** Covers the whole region at once, at the least ends above reach first, then with the fewest runs. */
  private coverWhole(beam: number): void {
    for (let high = this.highLeast; high < this.cover.high; high++) {
      if (this.coverAt(high, Number.POSITIVE_INFINITY, beam) === 'none') this.highLeast = high + 1;
    }
    for (let runs = this.runsLeast; runs < this.cover.runs; runs++) {
      const isProof = this.cover.high <= this.highLeast;
      if (this.coverAt(this.cover.high, runs, beam) === 'none' && isProof) this.runsLeast = runs + 1;
    }
  }

  private coverAt(high: number, runs: number, beam: number): 'found' | 'none' | 'cut' {
    const { cover, coverer } = this;
    const window = cover.whole();
    const dear = this.dearOf(window);
    const byHigh = runs === Number.POSITIVE_INFINITY;
    const found = coverer.cover(window.cells, {
      high,
      runs,
      dearHigh: dear.high - (cover.high - high),
      dearRuns: byHigh ? runs : dear.runs - (cover.runs - runs),
      byHigh,
      beam,
    });
    if (found === null) return coverer.cut ? 'cut' : 'none';
    cover.replace(window, found.sets);
    this.keepBest();
    if (!this.hasArrived()) this.price();
    return 'found';
  }

  /** Takes a window apart and lets the cover settle again. */
  private kick(until: number): void {
    const { cover, region } = this;
    const high = this.high;
    cover.takeApart(cover.windowAt(this.randomBits() % region.size, APART, this.windows));
    this.settle(until);
    if (this.keepBest() && this.high < high && !this.hasArrived()) this.price();
  }
}
