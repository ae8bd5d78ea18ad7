import type { Chains } from './chains';
import { FrontierLayer } from './frontier-layer';
import type { Region } from './region';

export interface FrontierAim {
  /** Only covers better than this count: fewer ends above reach, or as many and fewer chains. */
  readonly high: number;
  readonly chains: number;
  readonly steps: number;
}

export type FrontierOutcome =
  | { readonly kind: 'found'; readonly chains: Chains; readonly steps: number }
  | { readonly kind: 'none'; readonly steps: number }
  | { readonly kind: 'out of steps'; readonly steps: number };

const BOTH_OPEN = 0;

/**
 * The best cover of a region by chains: fewest ends above reach, then fewest chains, no chain overloaded; or the proof that
 * there is none better than `aim`. Cell by cell along the region's longer side it keeps every state of the frontier that may
 * still lead to a better cover, so its answer is exact; the work grows with the shorter side.
 */
export function searchFrontier(region: Region, aim: FrontierAim): FrontierOutcome {
  return new FrontierSearch(region, aim).run();
}

class FrontierSearch {
  private readonly width: number;
  private readonly slots: number;
  private readonly fields: number;
  private readonly rectangle: boolean;
  private readonly bothEnds: boolean;
  private readonly unit: number;
  private readonly usable: number;
  private readonly most: number;
  /** Cells in the order in which the frontier takes them, and each one's place across the frontier. */
  private readonly cells: Int32Array;
  private readonly across: Int32Array;
  private readonly ahead: 0 | 1;
  private readonly side: 0 | 1;
  /** Load of the cells not yet taken, and the most one chain can take of it. */
  private readonly weight: Float64Array;
  private readonly weightMost: number;
  private steps = 0;

  private readonly scratch: Int32Array;
  private readonly given: Int32Array;

  private readonly region: Region;
  private readonly aim: FrontierAim;

  constructor(region: Region, aim: FrontierAim) {
    this.region = region;
    this.aim = aim;
    const { size, column, row, limits, pixels } = region;
    this.rectangle = limits.counting === 'rectangle';
    this.bothEnds = limits.lastObeysReach === true;
    const columnFirst = column.reduce((a, b) => Math.min(a, b), column[0] ?? 0);
    const columnLast = column.reduce((a, b) => Math.max(a, b), column[0] ?? 0);
    const rowFirst = row.reduce((a, b) => Math.min(a, b), row[0] ?? 0);
    const rowLast = row.reduce((a, b) => Math.max(a, b), row[0] ?? 0);
    const alongColumns = columnLast - columnFirst >= rowLast - rowFirst;
    this.width = 1 + (alongColumns ? rowLast - rowFirst : columnLast - columnFirst);
    this.ahead = alongColumns ? 1 : 0;
    this.side = alongColumns ? 0 : 1;
    const line = (cell: number) => (alongColumns ? column[cell]! - columnFirst : row[cell]! - rowFirst);
    const across = (cell: number) => (alongColumns ? row[cell]! - rowFirst : column[cell]! - columnFirst);
    this.cells = Int32Array.from({ length: size }, (_, cell) => cell).sort(
      (a, b) => line(a) - line(b) || across(a) - across(b),
    );
    this.across = Int32Array.from(this.cells, across);
    this.slots = this.width + 1;
    this.fields = this.rectangle ? 6 : 3;
    let unit = 0;
    let sum = 0;
    let least = Number.POSITIVE_INFINITY;
    for (const each of pixels) {
      unit = greatestCommonDivisor(unit, each);
      sum += each;
      least = Math.min(least, each);
    }
    this.unit = unit || 1;
    const usable = Math.min(limits.usablePixels, this.rectangle ? Number.POSITIVE_INFINITY : sum);
    this.usable = usable;
    const byPixels = Math.floor(limits.usablePixels / least);
    this.most = Math.min(size, limits.panelsMost);
    this.weight = this.rectangle ? new Float64Array(size).fill(1) : pixels;
    this.weightMost = this.rectangle ? Math.max(1, Math.min(this.most, byPixels)) : usable;
    if (byPixels <= this.most) this.most = Number.POSITIVE_INFINITY;
    this.scratch = new Int32Array(this.slots + this.slots * this.fields);
    this.given = new Int32Array(this.slots + this.slots * this.fields + 2 * this.fields);
  }

  run(): FrontierOutcome {
    const { region, cells } = this;
    if (region.size === 0) return { kind: 'none', steps: 0 };
    let rest = 0;
    for (let cell = 0; cell < region.size; cell++) rest += this.weight[cell]!;
    let layer = new FrontierLayer(this.slots, this.fields);
    layer.add(this.scratch.fill(0), 0, 0, 0, -1, 0);
    const kept: { parent: Int32Array; decision: Uint8Array }[] = [];
    for (let taken = 0; taken < cells.length; taken++) {
      const after = new FrontierLayer(this.slots, this.fields);
      rest -= this.weight[cells[taken]!]!;
      for (let state = 0; state < layer.count; state++) {
        this.expand(layer, state, cells[taken]!, this.across[taken]!, rest, after);
        if (this.steps > this.aim.steps) return { kind: 'out of steps', steps: this.steps };
      }
      kept.push({ parent: after.parent.slice(0, after.count), decision: after.decision.slice(0, after.count) });
      layer = after;
      if (layer.count === 0) return { kind: 'none', steps: this.steps };
    }
    let best = 0;
    for (let state = 1; state < layer.count; state++) {
      if ((layer.high[state]! - layer.high[best]! || layer.closed[state]! - layer.closed[best]!) < 0) best = state;
    }
    return { kind: 'found', chains: this.trace(kept, best), steps: this.steps };
  }

  /** All that can follow when `cell` is taken from `state`. */
  private expand(
    layer: FrontierLayer,
    state: number,
    cell: number,
    across: number,
    rest: number,
    after: FrontierLayer,
  ): void {
    const { region, given, slots, fields, width } = this;
    const base = state * layer.stride;
    for (let i = 0; i < layer.stride; i++) given[i] = layer.states[base + i]!;
    const high = layer.high[state]!;
    const closed = layer.closed[state]!;
    const one = given[across]!;
    const two = given[width]!;
    given[across] = 0;
    given[width] = 0;
    const canAhead = region.neighbours[cell * 4 + this.ahead]! >= 0;
    const canSide = region.neighbours[cell * 4 + this.side]! >= 0;
    const out = region.outOfReach[cell]!;
    const put = (chain: number, ahead: boolean, side: boolean, moreHigh: number, moreClosed: number) => {
      given[across] = ahead ? chain : 0;
      given[width] = side ? chain : 0;
      this.keep(after, state, high + moreHigh, closed + moreClosed, rest, (ahead ? 1 : 0) | (side ? 2 : 0));
      given[across] = 0;
      given[width] = 0;
    };
    if (one !== 0 && two !== 0) {
      if (one === two) return;
      const a = slots + (one - 1) * fields;
      const b = slots + (two - 1) * fields;
      if (!this.mergeInto(a, b, cell)) return;
      const endA = given[a]!;
      const endB = given[b]!;
      for (let slot = 0; slot < slots; slot++) if (given[slot] === two) given[slot] = one;
      given[a] = endA || endB;
      if (endA !== BOTH_OPEN && endB !== BOTH_OPEN) put(0, false, false, this.highOf(endA - 1, endB - 1), 1);
      else put(0, false, false, 0, 0);
      return;
    }
    const chain = one || two;
    if (chain !== 0) {
      const a = slots + (chain - 1) * fields;
      if (!this.addCell(a, cell)) return;
      if (canAhead) put(chain, true, false, 0, 0);
      if (canSide) put(chain, false, true, 0, 0);
      const end = given[a]!;
      if (end === BOTH_OPEN) {
        given[a] = 1 + out;
        put(0, false, false, 0, 0);
      } else put(0, false, false, this.highOf(end - 1, out), 1);
      return;
    }
    put(0, false, false, out, 1);
    if (!canAhead && !canSide) return;
    const fresh = this.freshChain();
    const a = slots + (fresh - 1) * fields;
    this.beginChain(a, cell);
    given[a] = 1 + out;
    if (canAhead) put(fresh, true, false, 0, 0);
    if (canSide) put(fresh, false, true, 0, 0);
    if (canAhead && canSide) {
      given[a] = BOTH_OPEN;
      put(fresh, true, true, 0, 0);
    }
  }

  private highOf(outA: number, outB: number): number {
    return this.bothEnds ? outA + outB : outA & outB;
  }

  /** A number that no chain on the frontier has. */
  private freshChain(): number {
    let chain = 0;
    for (let slot = 0; slot < this.slots; slot++) chain = Math.max(chain, this.given[slot]!);
    return chain + 1;
  }

  private beginChain(at: number, cell: number): void {
    const { given, region } = this;
    if (this.rectangle) {
      given[at + 1] = -region.left[cell]!;
      given[at + 2] = region.right[cell]!;
      given[at + 3] = -region.top[cell]!;
      given[at + 4] = region.bottom[cell]!;
      given[at + 5] = this.most === Number.POSITIVE_INFINITY ? 0 : 1;
    } else {
      given[at + 1] = region.pixels[cell]! / this.unit;
      given[at + 2] = this.most === Number.POSITIVE_INFINITY ? 0 : 1;
    }
  }

  /** Whether the chain still fits with the cell. */
  private addCell(at: number, cell: number): boolean {
    const { given, region } = this;
    if (this.rectangle) {
      given[at + 1] = Math.max(given[at + 1]!, -region.left[cell]!);
      given[at + 2] = Math.max(given[at + 2]!, region.right[cell]!);
      given[at + 3] = Math.max(given[at + 3]!, -region.top[cell]!);
      given[at + 4] = Math.max(given[at + 4]!, region.bottom[cell]!);
      if (this.most !== Number.POSITIVE_INFINITY) given[at + 5]! += 1;
      return this.fits(at);
    }
    given[at + 1]! += region.pixels[cell]! / this.unit;
    if (this.most !== Number.POSITIVE_INFINITY) given[at + 2]! += 1;
    return this.fits(at);
  }

  private mergeInto(a: number, b: number, cell: number): boolean {
    const { given } = this;
    if (this.rectangle) {
      for (let field = 1; field < 5; field++) given[a + field] = Math.max(given[a + field]!, given[b + field]!);
      given[a + 5]! += given[b + 5]!;
    } else {
      given[a + 1]! += given[b + 1]!;
      given[a + 2]! += given[b + 2]!;
    }
    return this.addCell(a, cell);
  }

  private fits(at: number): boolean {
    const { given } = this;
    if (this.rectangle) {
      const area = (given[at + 1]! + given[at + 2]!) * (given[at + 3]! + given[at + 4]!);
      return area <= this.usable && given[at + 5]! <= this.most;
    }
    return given[at + 1]! * this.unit <= this.usable && given[at + 2]! <= this.most;
  }

  /** Numbers the chains of `given` afresh and keeps the state, unless no better cover can follow from it. */
  private keep(
    after: FrontierLayer,
    parent: number,
    high: number,
    closed: number,
    rest: number,
    decision: number,
  ): void {
    this.steps++;
    const { given, scratch, slots, fields } = this;
    if (high > this.aim.high) return;
    let chains = 0;
    let open = rest;
    const named = NAMED.fill(0);
    for (let slot = 0; slot < slots; slot++) {
      const chain = given[slot]!;
      if (chain === 0) {
        scratch[slot] = 0;
        continue;
      }
      if (named[chain] === 0) {
        named[chain] = ++chains;
        const from = slots + (chain - 1) * fields;
        const to = slots + (chains - 1) * fields;
        for (let field = 0; field < fields; field++) scratch[to + field] = given[from + field]!;
        if (!this.rectangle) open += given[from + 1]! * this.unit;
      }
      scratch[slot] = named[chain]!;
    }
    if (high === this.aim.high) {
      const least = Math.max(chains > 0 || rest > 0 ? 1 : 0, Math.ceil(open / this.weightMost - 1e-9));
      if (closed + least >= this.aim.chains) return;
    }
    after.add(scratch, chains, high, closed, parent, decision);
  }

  private trace(kept: readonly { parent: Int32Array; decision: Uint8Array }[], last: number): Chains {
    const { region, cells } = this;
    const next = new Int32Array(region.size * 2).fill(-1);
    const join = (a: number, b: number) => {
      next[next[a * 2]! < 0 ? a * 2 : a * 2 + 1] = b;
      next[next[b * 2]! < 0 ? b * 2 : b * 2 + 1] = a;
    };
    let state = last;
    for (let taken = cells.length - 1; taken >= 0; taken--) {
      const { parent, decision } = kept[taken]!;
      const cell = cells[taken]!;
      if ((decision[state]! & 1) !== 0) join(cell, region.neighbours[cell * 4 + this.ahead]!);
      if ((decision[state]! & 2) !== 0) join(cell, region.neighbours[cell * 4 + this.side]!);
      state = parent[state]!;
    }
    return chainsOfLinks(next);
  }
}

const NAMED = new Int32Array(64);

function greatestCommonDivisor(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y > 0) [x, y] = [y, x % y];
  return x;
}

/** Reads chains off the links of every cell (two a cell, -1 for none). */
function chainsOfLinks(links: Int32Array): Chains {
  const size = links.length / 2;
  const order = new Int32Array(size);
  const start = [0];
  const seen = new Uint8Array(size);
  let written = 0;
  for (let cell = 0; cell < size; cell++) {
    if (seen[cell] === 1 || links[cell * 2 + 1]! >= 0) continue;
    let before = -1;
    let at = cell;
    while (at >= 0) {
      seen[at] = 1;
      order[written++] = at;
      const next = links[at * 2] === before ? links[at * 2 + 1]! : links[at * 2]!;
      before = at;
      at = next;
    }
    start.push(written);
  }
  return { order, start: Int32Array.from(start) };
}
