import { anneal } from './anneal';
import { leastChains, type MostOnARun, mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import type { Chains } from './chains';
import { searchFrontier } from './exact/frontier-search';
import { PathCover } from './path-cover';
import { createRandomBits } from './random-bits';
import type { Region } from './region';
import { rewireWindows } from './rewire-windows';
import { fewestSets } from './sets/fewest-sets';

export interface ChainsAim {
  /** Moves tried, at most; a state of the exact search counts for several. */
  readonly steps: number;
  /** Stop at so many chains with no end above reach; 0: go on to the least possible. */
  readonly enough: number;
}

export interface ChainsAnswer {
  readonly chains: Chains;
  readonly count: number;
  /** Ends above reach. */
  readonly high: number;
  /** No cover with at most as many ends above reach has fewer chains: a proved bound, the answer's own count where it is proved best. */
  readonly least: number;
}

/** Weight of a bend and temperature, round by round: straight runs pack best as a rule, and not always. */
const TUNINGS = [
  { bendWeight: 0.4, temperature: 0.22 },
  { bendWeight: 0.25, temperature: 0.2 },
  { bendWeight: 0.5, temperature: 0.2 },
  { bendWeight: 0.1, temperature: 0.17 },
  { bendWeight: 0.35, temperature: 0.25 },
  { bendWeight: 0, temperature: 0.14 },
] as const;
const HIGH_WEIGHT = 1.5;

/** Moves of one round for each cell, and for a region however small. */
const MOVES_A_CELL = 1000;
const MOVES_AT_LEAST = 20_000;

/** Chains more or less than the best so far has, round by round, when ends above reach are to become fewer. */
const OTHER_COUNTS = [0, 1, -1, 3];

/**
 * A region no wider than this is searched exactly: with few states after the first rounds, as many a region needs no more, and
 * again after one round of every tuning with all the steps that are left (a state takes the time of so many moves). A wide one
 * may need more states than there are: it has so many a step on top, and goes on being annealed where these are too few.
 */
const EXACT_WIDTH = 8;
const EXACT_WIDTH_WIDE = 12;
const EXACT_STEP = 6;
const QUICK_ROUND = 1;
const QUICK_STATES = 40_000;
const STATES_ON_TOP = 1 / 12;

/**
 * Regions with so many panels a run at most are covered by sets, with so many states a step; each is charged as so many steps
 * (it takes the time of several), so that annealing still finds what they may miss.
 */
const SETS_PANELS = 8;
const SETS_STATES = 2 / 3;
const SETS_CHARGE = 0.36;

/** Wider regions with so many panels a run at most are searched window by window, with so much of the steps that are left. */
const WINDOW_PANELS = 7;
const WINDOW_SHARE = 1 / 3;

/**
 * The cover of a connected region by fewest ends above reach, then fewest chains, that the steps allow: from the best of
 * `starts` (at least one, none overloaded) it anneals towards the least possible, and proves narrow regions out. The same
 * arguments give the same answer.
 */
export function fewestChains(region: Region, starts: readonly Chains[], aim: ChainsAim): ChainsAnswer {
  const nowhereInReach = region.limits.lastObeysReach !== true && region.outOfReach.every((out) => out === 1);
  if (!nowhereInReach) return new ChainsSearch(region, starts, aim).run();
  // Every chain has its entry above reach then, so there is but one thing to make least.
  const answer = new ChainsSearch({ ...region, outOfReach: new Uint8Array(region.size) }, starts, aim).run();
  return { ...answer, high: answer.count };
}

class ChainsSearch {
  private best: Chains;
  private count = Number.POSITIVE_INFINITY;
  private high = Number.POSITIVE_INFINITY;
  private least = 0;
  /** Most chains that an anneal did not come down to. */
  private failed = 0;
  private steps = 0;
  private proved = false;
  private readonly region: Region;
  private readonly aim: ChainsAim;
  private readonly most: MostOnARun;
  private readonly highLeast: number;
  private readonly width: number;
  private readonly randomBits = createRandomBits(0x9e3779b9);

  constructor(region: Region, starts: readonly Chains[], aim: ChainsAim) {
    this.region = region;
    this.aim = aim;
    this.most = mostOnARun(region);
    this.highLeast = leastHigh(region, this.most);
    this.width = Math.min(spanOf(region.column), spanOf(region.row));
    this.best = starts[0]!;
    for (const start of starts) this.offer(start, new PathCover(region, start).high);
  }

  run(): ChainsAnswer {
    this.coverBySets();
    for (let round = 0; !this.hasArrived() && this.steps < this.aim.steps; round++) {
      if (this.proveOut(this.statesBefore(round))) break;
      if (round === TUNINGS.length && this.isForWindows()) {
        this.rewireWindows();
        continue;
      }
      const tuning = TUNINGS[round % TUNINGS.length]!;
      if (this.high > this.highLeast && (this.count <= this.least || round % 2 === 0)) this.lowerHigh(round, tuning);
      else this.lowerCount(tuning);
    }
    return { chains: this.best, count: this.count, high: this.high, least: this.least };
  }

  /** Regions of short runs are covered by sets of cells before all else. */
  private coverBySets(): void {
    if (this.hasArrived() || this.most.panels > SETS_PANELS) return;
    const { aim, highLeast } = this;
    const states = Math.floor(aim.steps * SETS_STATES);
    const answer = fewestSets(this.region, this.most, this.best, { highLeast, enough: aim.enough, states });
    if (answer === null) return;
    this.steps += Math.floor(answer.states * SETS_CHARGE);
    this.offer(answer.chains, answer.high);
    if (answer.high === this.high && answer.count === this.count) this.least = Math.max(this.least, answer.least);
    this.proved = answer.proved;
  }

  private hasArrived(): boolean {
    if (this.proved) return true;
    if (this.high === 0 && this.count <= this.aim.enough) return true;
    return this.high <= this.highLeast && this.count <= this.least;
  }

  private offer(chains: Chains, high: number): void {
    const count = chains.start.length - 1;
    if ((high - this.high || count - this.count) >= 0) return;
    if (high !== this.high) {
      this.least = leastChains(this.region, high, this.most);
      this.failed = this.least - 1;
    }
    this.best = chains;
    this.count = count;
    this.high = high;
  }

  /** Anneals with about as many chains as there are, as far down as the round's moves go. */
  private lowerHigh(round: number, tuning: (typeof TUNINGS)[number]): void {
    const chains = Math.max(1, this.count + OTHER_COUNTS[(round >> 1) % OTHER_COUNTS.length]!);
    const cover = this.coverWith(chains);
    let moves = this.movesOfRound();
    while (moves > 0 && this.high > this.highLeast) {
      const aim = { ...tuning, highWeight: HIGH_WEIGHT, chains, highMost: this.high - 1, steps: moves };
      const { steps, arrived } = anneal(cover, aim, this.randomBits);
      this.steps += Math.max(1, steps);
      moves -= steps;
      if (!arrived) return;
      this.offer(cover.read(), cover.high);
    }
  }

  /** Anneals towards half way between what was reached and what was not: the least possible first, one less at last. */
  private lowerCount(tuning: (typeof TUNINGS)[number]): void {
    const chains =
      this.failed < this.least ? this.least : Math.min(this.count - 1, Math.ceil((this.failed + this.count) / 2));
    const cover = this.coverWith(chains);
    const aim = { ...tuning, highWeight: HIGH_WEIGHT, chains, highMost: this.high, steps: this.movesOfRound() };
    const { steps, arrived } = anneal(cover, aim, this.randomBits);
    this.steps += Math.max(1, steps);
    if (arrived) this.offer(cover.read(), cover.high);
    else this.failed = Math.max(this.failed, chains);
  }

  private movesOfRound(): number {
    return Math.min(this.aim.steps - this.steps, MOVES_A_CELL * this.region.size + MOVES_AT_LEAST);
  }

  private coverWith(chains: number): PathCover {
    const cover = new PathCover(this.region, this.best);
    while (cover.chains < chains && cover.cutWorst());
    return cover;
  }

  /** Whether the region is too wide for the exact search, and its runs short enough for a window to hold several. */
  private isForWindows(): boolean {
    return this.width > EXACT_WIDTH_WIDE && this.most.panels <= WINDOW_PANELS;
  }

  private rewireWindows(): void {
    const steps = (this.aim.steps - this.steps) * WINDOW_SHARE;
    const chains = rewireWindows(this.region, this.best, Math.floor(steps / EXACT_STEP), this.randomBits);
    this.steps += Math.max(1, Math.floor(steps));
    this.offer(chains, new PathCover(this.region, chains).high);
  }

  /** States that the exact search may look at before a round; 0: none. */
  private statesBefore(round: number): number {
    const left = Math.floor((this.aim.steps - this.steps) / EXACT_STEP);
    if (round === QUICK_ROUND && this.width <= EXACT_WIDTH_WIDE) return Math.min(QUICK_STATES, left);
    if (round !== TUNINGS.length || this.width > EXACT_WIDTH_WIDE) return 0;
    return this.width <= EXACT_WIDTH ? left : Math.floor(this.aim.steps * STATES_ON_TOP);
  }

  /** Whether the best is found and proved with so many states. */
  private proveOut(states: number): boolean {
    if (states === 0) return false;
    const outcome = searchFrontier(this.region, this.most, { high: this.high, chains: this.count, steps: states });
    if (this.width <= EXACT_WIDTH) this.steps += outcome.steps * EXACT_STEP;
    if (outcome.kind === 'out of steps') return false;
    if (outcome.kind === 'found') this.offer(outcome.chains, new PathCover(this.region, outcome.chains).high);
    this.least = this.count;
    return true;
  }
}

function spanOf(values: Int32Array): number {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    first = Math.min(first, value);
    last = Math.max(last, value);
  }
  return last - first + 1;
}
