import type { Chains } from '../chains';
import type { Region } from '../region';
import type { RunSets } from './run-sets';

/** A window of a cover: whole sets, and their cells in ascending order. */
export interface CoverWindow {
  readonly sets: ReadonlySet<number>;
  readonly cells: readonly number[];
  readonly high: number;
}

/** A cover of a region by sets, changed set by set. */
export class SetCover {
  /** Set that covers each cell. */
  readonly setOf: Int32Array;
  high = 0;
  runs = 0;
  private readonly region: Region;
  private readonly sets: RunSets;
  /** Set of each cell alone. */
  private readonly single: Int32Array;

  constructor(region: Region, sets: RunSets, start: Chains) {
    const { size } = region;
    this.region = region;
    this.sets = sets;
    this.setOf = new Int32Array(size);
    this.single = new Int32Array(size);
    for (let cell = 0; cell < size; cell++) this.single[cell] = this.find([cell]);
    for (let chain = 0; chain + 1 < start.start.length; chain++) {
      this.lay(this.find(Array.from(start.order.subarray(start.start[chain]!, start.start[chain + 1]!))));
    }
  }

  /** Puts sets that cover the same cells in the place of those of a window. */
  replace(window: CoverWindow, by: Iterable<number>): void {
    for (const set of window.sets) this.lift(set);
    for (const set of by) this.lay(set);
  }

  /** Takes the sets of a window apart into cells alone. */
  takeApart(window: CoverWindow): void {
    this.replace(
      window,
      window.cells.map((cell) => this.single[cell]!),
    );
  }

  restore(setOf: Int32Array): void {
    this.high = 0;
    this.runs = 0;
    for (const set of new Set(setOf)) this.lay(set);
  }

  /** The sets that a wave from a cell meets, until the next would be one too many for so many cells. */
  windowAt(cell: number, cellsMost: number, firstSide: number): CoverWindow {
    const { region, sets, setOf } = this;
    const picked = new Set<number>();
    const cells: number[] = [];
    const wave = [cell];
    const seen = new Uint8Array(region.size);
    seen[cell] = 1;
    for (let i = 0; i < wave.length; i++) {
      const set = setOf[wave[i]!]!;
      if (!picked.has(set)) {
        const own = sets.cells.subarray(sets.start[set], sets.start[set + 1]);
        if (picked.size > 0 && cells.length + own.length > cellsMost) break;
        picked.add(set);
        cells.push(...own);
      }
      for (let side = 0; side < 4; side++) {
        const to = region.neighbours[wave[i]! * 4 + ((side + firstSide) & 3)]!;
        if (to < 0 || seen[to] === 1) continue;
        seen[to] = 1;
        wave.push(to);
      }
    }
    return this.asWindow(picked, cells);
  }

  whole(): CoverWindow {
    return this.asWindow(new Set(this.setOf), Array.from(this.setOf.keys()));
  }

  chains(): Chains {
    const { sets } = this;
    const order: number[] = [];
    const start = [0];
    for (const set of new Set(this.setOf)) {
      order.push(...sets.cells.subarray(sets.start[set], sets.start[set + 1]));
      start.push(order.length);
    }
    return { order: Int32Array.from(order), start: Int32Array.from(start) };
  }

  private asWindow(picked: ReadonlySet<number>, cells: number[]): CoverWindow {
    let high = 0;
    for (const set of picked) high += this.sets.high[set]!;
    return { sets: picked, cells: cells.sort((a, b) => a - b), high };
  }

  private lay(set: number): void {
    const { start, cells, high } = this.sets;
    for (let at = start[set]!; at < start[set + 1]!; at++) this.setOf[cells[at]!] = set;
    this.high += high[set]!;
    this.runs++;
  }

  private lift(set: number): void {
    this.high -= this.sets.high[set]!;
    this.runs--;
  }

  private find(chain: readonly number[]): number {
    const { start, cells, firstAt } = this.sets;
    const own = new Set(chain);
    const lowest = Math.min(...chain);
    let set = firstAt[lowest]!;
    const isIt = () => {
      if (start[set + 1]! - start[set]! !== chain.length) return false;
      for (let at = start[set]!; at < start[set + 1]!; at++) if (!own.has(cells[at]!)) return false;
      return true;
    };
    while (!isIt()) set++;
    return set;
  }
}
