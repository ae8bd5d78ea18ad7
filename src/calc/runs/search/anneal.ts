import { ChainChange } from './chain-change';
import type { PathCover } from './path-cover';

/** What one anneal aims at and how it moves. */
export interface AnnealAim {
  /** Chains it brings the cover down to. */
  readonly chains: number;
  /** Ends above reach it may leave. */
  readonly highMost: number;
  /** Weight of a bend beside one panel too much: straight runs pack better, and crews wire them faster. */
  readonly bendWeight: number;
  /** Weight of an end above reach. */
  readonly highWeight: number;
  readonly temperature: number;
  readonly steps: number;
}

/**
 * Moves ends of chains about at a fixed temperature until the cover has no more chains than asked, none overloaded and
 * no more ends above reach than allowed. Gives the steps used and whether it arrived; `cover` is left as it then is.
 */
export function anneal(
  cover: PathCover,
  aim: AnnealAim,
  randomBits: () => number,
): { steps: number; arrived: boolean } {
  const { neighbours } = cover.region;
  const change = new ChainChange(cover);
  const { bendWeight, highWeight, temperature, highMost } = aim;
  for (let step = 0; step < aim.steps; step++) {
    const tooMany = cover.chains > aim.chains;
    if (!tooMany && cover.overloaded === 0 && cover.high <= highMost) return { steps: step, arrived: true };
    const bits = randomBits();
    const chain = (bits >>> 6) % cover.chains;
    const from = (bits & 1) === 0 ? cover.endA[chain]! : cover.endB[chain]!;
    const to = neighbours[from * 4 + ((bits >>> 1) & 3)]!;
    if (to < 0 || !change.propose(from, to, (bits & 8) !== 0, tooMany)) continue;
    const cost = change.excess + change.high * highWeight + change.bends * bendWeight;
    if (cost <= 0 || randomBits() < 4294967296 * Math.exp(-cost / temperature)) change.commit();
  }
  const arrived = cover.chains <= aim.chains && cover.overloaded === 0 && cover.high <= highMost;
  return { steps: aim.steps, arrived };
}
