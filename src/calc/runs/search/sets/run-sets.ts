import { endsOutOfReach } from '../ends-out-of-reach';
import type { Region } from '../region';

/** Every set of a region's cells that one run can hold, in the order of the lowest cell of each. */
export interface RunSets {
  readonly count: number;
  /** Set i is `cells[start[i] .. start[i + 1] - 1]`, in the order of a chain that leaves fewest ends above reach. */
  readonly start: Int32Array;
  readonly cells: Int32Array;
  /** Ends above reach of that chain. */
  readonly high: Uint8Array;
  /** Sets whose lowest cell is c: `firstAt[c] .. firstAt[c + 1] - 1`. */
  readonly firstAt: Int32Array;
}

/** Cells that are told apart by one number; longer sets by their list. */
const CELLS_IN_A_NUMBER = 6;

/** Walks every chain of neighbours that a port takes; null where there are more than `chainsMost`. */
export function listRunSets(region: Region, chainsMost: number): RunSets | null {
  const walk = new SetWalk(region, chainsMost);
  for (let cell = 0; cell < region.size; cell++) {
    if (!walk.go(cell, 0, Number.POSITIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0)) return null;
  }
  return walk.sets();
}

class SetWalk {
  private readonly region: Region;
  private readonly chainsMost: number;
  private readonly found = new Map<number | string, number>();
  private readonly chains: number[][] = [];
  private readonly high: number[] = [];
  private readonly chain: number[] = [];
  private readonly taken: Uint8Array;
  private walked = 0;

  constructor(region: Region, chainsMost: number) {
    this.region = region;
    this.chainsMost = chainsMost;
    this.taken = new Uint8Array(region.size);
  }

  /** Leads the chain on to a cell and from there everywhere; false where chains are too many. */
  go(cell: number, pixels: number, left: number, right: number, top: number, bottom: number): boolean {
    const { region, chain, taken } = this;
    const { limits } = region;
    const l = Math.min(left, region.left[cell]!);
    const r = Math.max(right, region.right[cell]!);
    const t = Math.min(top, region.top[cell]!);
    const b = Math.max(bottom, region.bottom[cell]!);
    const sum = pixels + region.pixels[cell]!;
    const load = limits.counting === 'rectangle' ? (r - l) * (b - t) : sum;
    if (load > limits.usablePixels || chain.length >= limits.panelsMost) return true;
    if (++this.walked > this.chainsMost) return false;
    chain.push(cell);
    taken[cell] = 1;
    if (chain[0]! <= cell) this.note(chain[0]!, cell);
    let goesOn = true;
    for (let side = 0; side < 4 && goesOn; side++) {
      const to = region.neighbours[cell * 4 + side]!;
      if (to >= 0 && taken[to] === 0) goesOn = this.go(to, sum, l, r, t, b);
    }
    chain.pop();
    taken[cell] = 0;
    return goesOn;
  }

  private note(first: number, last: number): void {
    const { region, chain, found, high } = this;
    const own = endsOutOfReach(region.outOfReach, first, last, region.limits.lastObeysReach === true);
    const key = this.keyOfChain();
    const known = found.get(key);
    if (known === undefined) {
      found.set(key, this.chains.length);
      this.chains.push(chain.slice());
      high.push(own);
    } else if (own < high[known]!) {
      this.chains[known] = chain.slice();
      high[known] = own;
    }
  }

  private keyOfChain(): number | string {
    const sorted = this.chain.toSorted((a, b) => a - b);
    if (sorted.length > CELLS_IN_A_NUMBER || this.region.size > 400) return sorted.join();
    return sorted.reduce((key, cell) => key * 401 + cell + 1, 0);
  }

  sets(): RunSets {
    const { chains, high, region } = this;
    const lowest = chains.map((chain) => Math.min(...chain));
    const order = Array.from(chains.keys()).sort((a, b) => lowest[a]! - lowest[b]!);
    const start = new Int32Array(order.length + 1);
    const firstAt = new Int32Array(region.size + 1);
    order.forEach((chain, i) => {
      start[i + 1] = start[i]! + chains[chain]!.length;
      firstAt[lowest[chain]! + 1]!++;
    });
    for (let cell = 0; cell < region.size; cell++) firstAt[cell + 1]! += firstAt[cell]!;
    return {
      count: order.length,
      start,
      cells: Int32Array.from(order.flatMap((chain) => chains[chain]!)),
      high: Uint8Array.from(order, (chain) => high[chain]!),
      firstAt,
    };
  }
}
