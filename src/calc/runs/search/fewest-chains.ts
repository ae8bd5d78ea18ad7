import { anneal } from './anneal';
import { leastChains, mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import type { Chains } from './chains';
import { searchFrontier } from './exact/frontier-search';
import { PathCover } from './path-cover';
import { createRandomBits } from './random-bits';
import type { Region } from './region';

export interface ChainsAnswer {
  readonly chains: Chains;
  readonly count: number;
  /** Ends above reach. */
  readonly high: number;
  /** No cover with as few ends above reach has fewer chains than this. */
  readonly least: number;
  readonly steps: number;
}

export interface ChainsAim {
  readonly steps: number;
  /** Good enough to stop at: no ends above reach and so many chains. */
  readonly enough: number;
}

/** Weight of a bend and temperature of one round after the other: straight runs pack best as a rule, and not always. */
const ROUNDS = [
  { bendWeight: 0.4, temperature: 0.22 },
  { bendWeight: 0.25, temperature: 0.2 },
  { bendWeight: 0.5, temperature: 0.2 },
  { bendWeight: 0.1, temperature: 0.17 },
  { bendWeight: 0.35, temperature: 0.25 },
  { bendWeight: 0, temperature: 0.14 },
] as const;

/** A frontier this wide is searched exactly. */
const EXACT_WIDTH = 8;
/** One step of the exact search takes the time of so many of an anneal. */
const EXACT_STEP = 6;

/**
 * The cover of a connected region by fewest ends above reach, then fewest chains, that the steps allow: from the best of
 * `starts` (at least one, none overloaded) it anneals towards one less, and proves small regions out.
 */
export function fewestChains(region: Region, starts: readonly Chains[], aim: ChainsAim): ChainsAnswer {
  return new ChainsSearch(region, starts, aim).run();
}

class ChainsSearch {
  private best: Chains;
  private count: number;
  private high: number;
  private least: number;
  private steps = 0;
  private readonly most;
  private readonly highLeast: number;
  private readonly randomBits = createRandomBits(0x9e3779b9);
  private readonly region: Region;
  private readonly starts: readonly Chains[];
  private readonly aim: ChainsAim;

  constructor(region: Region, starts: readonly Chains[], aim: ChainsAim) {
    this.region = region;
    this.starts = starts;
    this.aim = aim;
    this.most = mostOnARun(region);
    this.highLeast = leastHigh(region, this.most);
    this.best = starts[0]!;
    this.count = Number.POSITIVE_INFINITY;
    this.high = Number.POSITIVE_INFINITY;
    this.least = 0;
    for (const start of starts) this.offer(start, new PathCover(region, start).high);
  }

  run(): ChainsAnswer {
    const { aim } = this;
    let proved = false;
    for (let round = 0; !this.arrived() && this.steps < aim.steps; round++) {
      if (round === ROUNDS.length && this.isSmall()) {
        proved = this.prove();
        if (proved) break;
      }
      this.anneal(round);
    }
    return {
      chains: this.best,
      count: this.count,
      high: this.high,
      least: proved ? this.count : Math.min(this.least, this.count),
      steps: this.steps,
    };
  }

  private arrived(): boolean {
    if (this.high === 0 && this.count <= this.aim.enough) return true;
    return this.high <= this.highLeast && this.count <= this.least;
  }

  private offer(chains: Chains, high: number): boolean {
    const count = chains.start.length - 1;
    if ((high - this.high || count - this.count) >= 0) return false;
    if (high !== this.high) this.least = leastChains(this.region, high, this.most);
    this.best = chains;
    this.count = count;
    this.high = high;
    return true;
  }

  private anneal(round: number): void {
    const { region } = this;
    const tuning = ROUNDS[round % ROUNDS.length]!;
    const lowerHigh = this.high > this.highLeast && (this.count <= this.least || round % 2 === 0);
    const from = round < ROUNDS.length ? this.best : this.starts[round % this.starts.length]!;
    const chains = lowerHigh ? this.count + ((round >> 1) % 4) : this.count - 1;
    const cover = new PathCover(region, splitTo(from, chains));
    const steps = Math.min(this.aim.steps - this.steps, 2000 * (region.size + 20));
    const result = anneal(
      cover,
      { ...tuning, chains, highMost: lowerHigh ? this.high - 1 : this.high, highWeight: 1.5, steps },
      this.randomBits,
    );
    this.steps += Math.max(1, result.steps);
    if (result.arrived) this.offer(cover.read(), cover.high);
  }

  private isSmall(): boolean {
    const { column, row } = this.region;
    const span = (values: Int32Array) =>
      values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b)) + 1;
    return Math.min(span(column), span(row)) <= EXACT_WIDTH;
  }

  private prove(): boolean {
    const steps = Math.floor((this.aim.steps - this.steps) / EXACT_STEP);
    const outcome = searchFrontier(this.region, this.most, { high: this.high, chains: this.count, steps });
    this.steps += outcome.steps * EXACT_STEP;
    if (outcome.kind === 'found') {
      const cover = new PathCover(this.region, outcome.chains);
      this.offer(outcome.chains, cover.high);
    }
    return outcome.kind !== 'out of steps';
  }
}

/** Halves the longest chains until there are as many as asked. */
function splitTo(chains: Chains, count: number): Chains {
  const start = Array.from(chains.start);
  while (start.length - 1 < count) {
    let longest = 0;
    for (let i = 1; i + 1 < start.length; i++) {
      if (start[i + 1]! - start[i]! > start[longest + 1]! - start[longest]!) longest = i;
    }
    const length = start[longest + 1]! - start[longest]!;
    if (length < 2) break;
    start.splice(longest + 1, 0, start[longest]! + (length >> 1));
  }
  return { order: chains.order, start: Int32Array.from(start) };
}
