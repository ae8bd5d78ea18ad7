import type { MostOnARun } from '../bounds/least-chains';
import type { Chains } from '../chains';
import { chainsOfLinks } from '../chains-of-links';
import type { Region } from '../region';
import { type FrontierCost, FrontierLayer } from './frontier-layer';
import { type FrontierOrder, frontierOrder } from './frontier-order';
import { OpenLoads } from './open-loads';

export interface FrontierAim {
  /** Only covers better than this count: fewer ends above reach, or as many and fewer chains. */
  readonly high: number;
  readonly chains: number;
  /** States looked at, at most. */
  readonly steps: number;
}

export type FrontierOutcome =
  | { readonly kind: 'found'; readonly chains: Chains; readonly steps: number }
  | { readonly kind: 'none'; readonly steps: number }
  | { readonly kind: 'out of steps'; readonly steps: number };

/** Field 0 of a chain: both its ends are still open; 1 or 2: one is closed, in reach or above it. */
const BOTH_OPEN = 0;

/** Bits of a decision. */
const AHEAD = 1;
const ALONG = 2;

/**
 * The best cover of a region by chains: fewest ends above reach, then fewest chains, no chain overloaded; or the proof that
 * there is none better than `aim`. Cell by cell along the region's longer side it keeps every state of the frontier that may
 * still lead to a better cover, so its answer is exact; the work grows with the shorter side.
 */
export function searchFrontier(region: Region, most: MostOnARun, aim: FrontierAim): FrontierOutcome {
  if (region.size === 0) return { kind: 'none', steps: 0 };
  return new FrontierSearch(region, most, aim).run();
}

class FrontierSearch {
  private readonly region: Region;
  private readonly most: MostOnARun;
  private readonly aim: FrontierAim;
  private readonly order: FrontierOrder;
  private readonly loads: OpenLoads;
  private readonly slots: number;
  private readonly bothEnds: boolean;
  /** The state being changed, and the one being kept with its chains numbered afresh. */
  private readonly given: Int32Array;
  private readonly fresh: Int32Array;
  private readonly numbered: Int32Array;
  private steps = 0;
  /** Of the cells not yet taken: how many, their pixels, and how many are in reach. */
  private cellsLeft = 0;
  private inReachLeft = 0;
  private readonly singlesNeverPay: boolean;
  /** Of all cells together, and of a chain at most. */
  private unitsInAll = 0;
  private readonly unitsMost: number;
  private readonly cost: FrontierCost = { high: 0, closed: 0, settled: 0 };
  private readonly aside: Int32Array;

  constructor(region: Region, most: MostOnARun, aim: FrontierAim) {
    this.region = region;
    this.most = most;
    this.aim = aim;
    this.order = frontierOrder(region);
    this.loads = new OpenLoads(region);
    this.slots = this.order.width + 1;
    this.bothEnds = region.limits.lastObeysReach === true;
    // One chain more than there are slots: a new one begins before its slots are taken.
    const length = this.slots + (this.slots + 2) * this.loads.fields;
    this.given = new Int32Array(length);
    this.fresh = new Int32Array(length);
    this.numbered = new Int32Array(this.slots + 3);
    let heaviest = 0;
    for (let cell = 0; cell < region.size; cell++) {
      heaviest = Math.max(heaviest, region.pixels[cell]!);
      this.cellsLeft++;
      this.inReachLeft += 1 - region.outOfReach[cell]!;
    }
    this.unitsMost = Math.floor(most.pixels / this.loads.unit);
    for (const units of this.loads.units) this.unitsInAll += units;
    this.aside = new Int32Array(this.loads.fields);
    this.singlesNeverPay = heaviest * 2 <= most.pixels && most.panels >= 2;
  }

  run(): FrontierOutcome {
    if (!this.loads.exact) return { kind: 'out of steps', steps: 0 };
    const { cells, across } = this.order;
    let layer = new FrontierLayer(this.slots, this.loads.fields, this.loads.compared);
    layer.add(this.fresh, 0, { high: 0, closed: 0, settled: 0 }, -1, 0);
    const taken: { parent: Int32Array; decision: Uint8Array }[] = [];
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i]!;
      this.cellsLeft--;
      this.inReachLeft -= 1 - this.region.outOfReach[cell]!;
      const after = new FrontierLayer(this.slots, this.loads.fields, this.loads.compared);
      for (let state = 0; state < layer.count; state++) {
        this.take(cell, across[i]!, layer, state, after);
        if (this.steps > this.aim.steps) return { kind: 'out of steps', steps: this.steps };
      }
      if (after.count === 0) return { kind: 'none', steps: this.steps };
      taken.push({ parent: after.parent.slice(0, after.count), decision: after.decision.slice(0, after.count) });
      layer = after;
    }
    return { kind: 'found', chains: this.trace(taken, layer.best()), steps: this.steps };
  }

  /** All that can follow when `cell` is taken from `state`. */
  private take(cell: number, across: number, layer: FrontierLayer, state: number, after: FrontierLayer): void {
    const { given, slots, region, order, loads, cost, aside } = this;
    layer.read(state, given);
    const behind = given[across]!;
    const before = given[slots - 1]!;
    given[across] = 0;
    given[slots - 1] = 0;
    const out = region.outOfReach[cell]!;
    const ahead = region.neighbours[cell * 4 + order.ahead]!;
    const along = region.neighbours[cell * 4 + order.along]!;
    cost.high = layer.high[state]!;
    cost.closed = layer.closed[state]!;
    cost.settled = layer.settled[state]!;
    const close = (at: number, high: number) => {
      const { high: highBefore, settled } = cost;
      cost.high += high;
      cost.closed++;
      cost.settled += loads.unitsOn(given, at);
      this.keep(after, state, 0);
      cost.high = highBefore;
      cost.closed--;
      cost.settled = settled;
    };
    const go = (chain: number, decision: number) => {
      const at = this.fieldsOf(chain);
      aside.set(given.subarray(at, at + loads.fields));
      let fits = true;
      if ((decision & AHEAD) !== 0) {
        fits = loads.lead(given, at, ahead);
        given[across] = chain;
      }
      if (fits && (decision & ALONG) !== 0) {
        fits = loads.lead(given, at, along);
        given[slots - 1] = chain;
      }
      if (fits) this.keep(after, state, decision);
      given.set(aside, at);
      given[across] = 0;
      given[slots - 1] = 0;
    };
    if (behind !== 0 && before !== 0) {
      if (behind === before) return;
      const at = this.fieldsOf(behind);
      const other = this.fieldsOf(before);
      if (!loads.join(given, at, other, cell)) return;
      loads.take(given, at, cell);
      for (let slot = 0; slot < slots; slot++) if (given[slot] === before) given[slot] = behind;
      const one = given[at]!;
      const two = given[other]!;
      if (one === BOTH_OPEN || two === BOTH_OPEN) {
        given[at] = one + two;
        this.keep(after, state, 0);
      } else close(at, this.highOf(one - 1, two - 1));
      return;
    }
    const chain = behind + before;
    if (chain !== 0) {
      const at = this.fieldsOf(chain);
      loads.take(given, at, cell);
      if (ahead >= 0) go(chain, AHEAD);
      if (along >= 0) go(chain, ALONG);
      const end = given[at]!;
      if (end === BOTH_OPEN) {
        given[at] = 1 + out;
        this.keep(after, state, 0);
      } else close(at, this.highOf(end - 1, out));
      return;
    }
    const begun = this.unusedChain();
    const at = this.fieldsOf(begun);
    loads.begin(given, at, cell);
    close(at, out);
    given[at] = 1 + out;
    if (ahead >= 0) go(begun, AHEAD);
    if (along >= 0) go(begun, ALONG);
    given[at] = BOTH_OPEN;
    if (ahead >= 0 && along >= 0) go(begun, AHEAD | ALONG);
  }

  private fieldsOf(chain: number): number {
    return this.slots + (chain - 1) * this.loads.fields;
  }

  private unusedChain(): number {
    let chain = 0;
    for (let slot = 0; slot < this.slots; slot++) chain = Math.max(chain, this.given[slot]!);
    return chain + 1;
  }

  private highOf(outA: number, outB: number): number {
    return this.bothEnds ? outA + outB : outA & outB;
  }

  /** Numbers the chains of `given` afresh and keeps the state, unless no better cover can follow from it. */
  private keep(after: FrontierLayer, parent: number, decision: number): void {
    this.steps++;
    const { given, fresh, slots, loads, numbered, cost } = this;
    const { high, closed } = cost;
    if (high > this.aim.high) return;
    const { fields } = loads;
    numbered.fill(0);
    let chains = 0;
    let inReach = this.inReachLeft;
    for (let slot = 0; slot < slots; slot++) {
      const chain = given[slot]!;
      if (chain !== 0 && numbered[chain] === 0) {
        numbered[chain] = ++chains;
        const from = this.fieldsOf(chain);
        const to = this.fieldsOf(chains);
        for (let field = 0; field < fields; field++) fresh[to + field] = given[from + field]!;
        if (given[from] === 1) inReach++;
      }
      fresh[slot] = numbered[chain]!;
    }
    // Chains that are still to be closed at least, and ends above reach they leave, as every end in reach serves one.
    const runs = Math.max(
      Math.ceil(this.cellsLeft / this.most.panels),
      Math.ceil((this.unitsInAll - cost.settled) / this.unitsMost),
      chains > 0 ? 1 : 0,
    );
    const ends = !this.bothEnds ? runs : this.singlesNeverPay ? 2 * runs - 1 : runs;
    const highLeast = high + Math.max(0, ends - inReach);
    if (highLeast > this.aim.high || (highLeast === this.aim.high && closed + runs >= this.aim.chains)) return;
    after.add(fresh, chains, cost, parent, decision);
  }

  private trace(taken: readonly { parent: Int32Array; decision: Uint8Array }[], last: number): Chains {
    const { cells, ahead, along } = this.order;
    const { neighbours } = this.region;
    const links = new Int32Array(this.region.size * 2).fill(-1);
    const join = (a: number, b: number) => {
      links[links[a * 2]! < 0 ? a * 2 : a * 2 + 1] = b;
      links[links[b * 2]! < 0 ? b * 2 : b * 2 + 1] = a;
    };
    let state = last;
    for (let i = cells.length - 1; i >= 0; i--) {
      const cell = cells[i]!;
      const { parent, decision } = taken[i]!;
      if ((decision[state]! & AHEAD) !== 0) join(cell, neighbours[cell * 4 + ahead]!);
      if ((decision[state]! & ALONG) !== 0) join(cell, neighbours[cell * 4 + along]!);
      state = parent[state]!;
    }
    return chainsOfLinks(links);
  }
}
