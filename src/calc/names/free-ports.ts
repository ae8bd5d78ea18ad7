import type { PortOutlets } from '../ports/outlets';

/** Ports of one processor while they are given away, as slots numbered from 0 through its breakouts. */
export class FreePorts {
  readonly #outlets: PortOutlets;
  readonly #held: ReadonlySet<number>;
  readonly #taken = new Set<number>();
  readonly #boxes = new Set<number>();

  /** `held`: slots whose names are held, whether or not they are in force. */
  constructor(outlets: PortOutlets, held: ReadonlySet<number>) {
    this.#outlets = outlets;
    this.#held = held;
  }

  get left(): number {
    return this.#outlets.portsAProcessor - this.#taken.size;
  }

  isFree(slot: number): boolean {
    return !this.#taken.has(slot);
  }

  take(slot: number): number {
    this.#taken.add(slot);
    this.#boxes.add(this.boxOf(slot));
    return slot;
  }

  /** Breakout of a slot, from 0; the same for all on a processor with direct ports. */
  boxOf(slot: number): number {
    const { breakoutsAProcessor, portsABreakout } = this.#outlets;
    return breakoutsAProcessor > 0 && portsABreakout > 0 ? Math.floor(slot / portsABreakout) : 0;
  }

  /** What speaks against giving a free slot to a new run: a name that is held, then a breakout that nothing is on yet. */
  cost(slot: number): number {
    return (this.#held.has(slot) ? 2 : 0) + (this.#boxes.has(this.boxOf(slot)) ? 0 : 1);
  }

  /** The free slot against which least speaks, of equals the first; beyond the processor's ports where all of them are taken. */
  best(extraCost: (slot: number) => number = () => 0): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let slot = 0; slot < this.#outlets.portsAProcessor && least > 0; slot++) {
      if (this.#taken.has(slot)) continue;
      const cost = this.cost(slot) + extraCost(slot);
      if (cost < least) [best, least] = [slot, cost];
    }
    if (best >= 0) return best;
    for (best = this.#outlets.portsAProcessor; this.#taken.has(best); ) best += 1;
    return best;
  }
}
