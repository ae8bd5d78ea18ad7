/** What a state has cost. */
export interface FrontierCost {
  /** Ends above reach of its closed chains. */
  high: number;
  /** Closed chains. */
  closed: number;
  /** Units of load on them: for bounds, not compared. */
  settled: number;
}

/**
 * The states of a frontier search after one cell, kept apart by what is open on the frontier. Of two states that are open
 * alike, one whose chains all carry no more and that has cost no more makes the other one needless; it is dropped.
 *
 * A state is `slots` numbers (0: nothing leads on here, else 1 + the number of its chain, by first appearance), then for each
 * chain its `fields`: field 0 says how its ends stand and must be equal, those up to `compared` are loads, less being better;
 * the rest is kept and not compared.
 */
export class FrontierLayer {
  count = 0;
  states: Int32Array;
  high: Int32Array;
  closed: Int32Array;
  /** Units of load on closed chains: for bounds, not compared. */
  settled: Int32Array;
  parent: Int32Array;
  /** Bit 0: leads on to the next line; bit 1: leads on along the line. */
  decision: Uint8Array;
  private heads: Int32Array;
  private next: Int32Array;
  private capacity = 256;
  readonly stride: number;
  private readonly slots: number;
  private readonly fields: number;
  private readonly compared: number;

  constructor(slots: number, fields: number, compared = fields) {
    this.slots = slots;
    this.fields = fields;
    this.compared = compared;
    this.stride = slots + slots * fields;
    this.states = new Int32Array(this.capacity * this.stride);
    this.high = new Int32Array(this.capacity);
    this.closed = new Int32Array(this.capacity);
    this.settled = new Int32Array(this.capacity);
    this.parent = new Int32Array(this.capacity);
    this.decision = new Uint8Array(this.capacity);
    this.next = new Int32Array(this.capacity);
    this.heads = new Int32Array(1024).fill(-1);
  }

  /** Adds the state in `scratch` with its `chains` chains unless one that is there makes it needless. */
  add(scratch: Int32Array, chains: number, cost: FrontierCost, parent: number, decision: number): void {
    const { high, closed } = cost;
    const hash = this.hash(scratch, chains);
    let head = hash & (this.heads.length - 1);
    let looked = 0;
    for (let at = this.heads[head]!; at >= 0 && looked < 40; at = this.next[at]!) {
      if (!this.openAlike(at, scratch, chains)) continue;
      looked++;
      const order = this.compareLoads(at, scratch, chains);
      const dearer = high - this.high[at]! || closed - this.closed[at]!;
      if (order <= 0 && dearer >= 0 && order > -2) return;
      if ((order === 0 || order === 1) && dearer <= 0) {
        this.write(at, scratch, chains, cost, parent, decision);
        return;
      }
    }
    if (this.count === this.capacity) {
      this.grow();
      head = hash & (this.heads.length - 1);
    }
    const at = this.count++;
    this.write(at, scratch, chains, cost, parent, decision);
    this.next[at] = this.heads[head]!;
    this.heads[head] = at;
  }

  /** Copies a state out; chains it does not have keep what they were. */
  read(state: number, into: Int32Array): void {
    const base = state * this.stride;
    for (let i = 0; i < this.stride; i++) into[i] = this.states[base + i]!;
  }

  /** The state that cost least. */
  best(): number {
    let best = 0;
    for (let state = 1; state < this.count; state++) {
      if ((this.high[state]! - this.high[best]! || this.closed[state]! - this.closed[best]!) < 0) best = state;
    }
    return best;
  }

  private hash(state: Int32Array, chains: number): number {
    let hash = 17;
    for (let slot = 0; slot < this.slots; slot++) hash = Math.imul(hash, 31) + state[slot]!;
    for (let chain = 0; chain < chains; chain++) {
      hash = Math.imul(hash, 31) + state[this.slots + chain * this.fields]!;
    }
    hash ^= hash >>> 15;
    hash = Math.imul(hash, 0x2c1b3c6d);
    return (hash ^ (hash >>> 13)) >>> 0;
  }

  private openAlike(at: number, state: Int32Array, chains: number): boolean {
    const base = at * this.stride;
    for (let slot = 0; slot < this.slots; slot++) if (this.states[base + slot] !== state[slot]) return false;
    for (let chain = 0; chain < chains; chain++) {
      const field = this.slots + chain * this.fields;
      if (this.states[base + field] !== state[field]) return false;
    }
    return true;
  }

  /** -1: the kept one carries no more anywhere; 0: equal; 1: the new one carries no more; -2: neither. */
  private compareLoads(at: number, state: Int32Array, chains: number): number {
    const base = at * this.stride;
    let less = false;
    let more = false;
    for (let chain = 0; chain < chains; chain++) {
      const field = this.slots + chain * this.fields;
      for (let i = field + 1; i < field + this.compared; i++) {
        const kept = this.states[base + i]!;
        const load = state[i]!;
        if (kept < load) less = true;
        else if (kept > load) more = true;
      }
      if (less && more) return -2;
    }
    return less ? -1 : more ? 1 : 0;
  }

  private write(
    at: number,
    state: Int32Array,
    chains: number,
    cost: FrontierCost,
    parent: number,
    decision: number,
  ): void {
    const base = at * this.stride;
    const length = this.slots + chains * this.fields;
    for (let i = 0; i < length; i++) this.states[base + i] = state[i]!;
    this.high[at] = cost.high;
    this.closed[at] = cost.closed;
    this.settled[at] = cost.settled;
    this.parent[at] = parent;
    this.decision[at] = decision;
  }

  private grow(): void {
    this.capacity *= 2;
    const widen = (old: Int32Array, length: number) => {
      const wide = new Int32Array(length);
      wide.set(old);
      return wide;
    };
    this.states = widen(this.states, this.capacity * this.stride);
    this.high = widen(this.high, this.capacity);
    this.closed = widen(this.closed, this.capacity);
    this.settled = widen(this.settled, this.capacity);
    this.parent = widen(this.parent, this.capacity);
    this.next = widen(this.next, this.capacity);
    const decision = new Uint8Array(this.capacity);
    decision.set(this.decision);
    this.decision = decision;
    this.heads = new Int32Array(this.heads.length * 2).fill(-1);
    for (let at = 0; at < this.count; at++) {
      const head = this.hashAt(at) & (this.heads.length - 1);
      this.next[at] = this.heads[head]!;
      this.heads[head] = at;
    }
  }

  private hashAt(at: number): number {
    const state = this.states.subarray(at * this.stride, (at + 1) * this.stride);
    let chains = 0;
    for (let slot = 0; slot < this.slots; slot++) chains = Math.max(chains, state[slot]!);
    return this.hash(state, chains);
  }
}
