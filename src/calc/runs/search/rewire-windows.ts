import { mostOnARun } from './bounds/least-chains';
import type { Chains } from './chains';
import { endsOutOfReach } from './ends-out-of-reach';
import { searchFrontier } from './exact/frontier-search';
import type { Region } from './region';
import { subRegion } from './sub-region';

/** Cells of a window, about, and states that the exact search of one may look at. */
const WINDOW_CELLS = 24;
const WINDOW_STATES = 3000;
/** What making a window ready takes, in states. */
const STATES_A_WINDOW = 100;

/**
 * Covers one window of neighbouring chains after the other anew by the exact search: never with more ends above reach, nor
 * with as many and more chains. A cover as good as the one there is taken too, so that windows do not meet the same wall
 * again. Windows are drawn until `states` are used up.
 */
export function rewireWindows(region: Region, start: Chains, states: number, randomBits: () => number): Chains {
  const bothEnds = region.limits.lastObeysReach === true;
  let chains = listChains(start);
  const chainOf = labelled(region, chains);
  for (let spent = 0; spent < states; ) {
    const picked = chainsAround(region, chains, chainOf, randomBits() % region.size);
    const cells = Int32Array.from([...picked].flatMap((chain) => chains[chain]!)).sort();
    const window = subRegion(region, cells);
    let high = 0;
    for (const chain of picked) {
      const own = chains[chain]!;
      high += endsOutOfReach(region.outOfReach, own[0]!, own[own.length - 1]!, bothEnds);
    }
    const aim = { high, chains: picked.size + 1, steps: WINDOW_STATES };
    const outcome = searchFrontier(window, mostOnARun(window), aim);
    spent += outcome.steps + STATES_A_WINDOW;
    if (outcome.kind !== 'found') continue;
    const rewired = listChains(outcome.chains).map((chain) => chain.map((cell) => cells[cell]!));
    chains = [...chains.filter((_, chain) => !picked.has(chain)), ...rewired];
    chainOf.set(labelled(region, chains));
  }
  const ends = [0];
  for (const chain of chains) ends.push(ends[ends.length - 1]! + chain.length);
  return { order: Int32Array.from(chains.flat()), start: Int32Array.from(ends) };
}

function listChains({ order, start }: Chains): number[][] {
  return Array.from({ length: start.length - 1 }, (_, chain) =>
    Array.from(order.subarray(start[chain]!, start[chain + 1]!)),
  );
}

function labelled(region: Region, chains: readonly (readonly number[])[]): Int32Array {
  const chainOf = new Int32Array(region.size);
  chains.forEach((cells, chain) => {
    for (const cell of cells) chainOf[cell] = chain;
  });
  return chainOf;
}

/** The chains that a wave from a cell meets, until they have cells enough. */
function chainsAround(
  region: Region,
  chains: readonly (readonly number[])[],
  chainOf: Int32Array,
  cell: number,
): ReadonlySet<number> {
  const picked = new Set<number>();
  const wave = [cell];
  const seen = new Uint8Array(region.size);
  seen[cell] = 1;
  let size = 0;
  for (let i = 0; i < wave.length && size < WINDOW_CELLS; i++) {
    const at = wave[i]!;
    const chain = chainOf[at]!;
    if (!picked.has(chain)) {
      picked.add(chain);
      size += chains[chain]!.length;
    }
    for (let side = 0; side < 4; side++) {
      const to = region.neighbours[at * 4 + side]!;
      if (to < 0 || seen[to] === 1) continue;
      seen[to] = 1;
      wave.push(to);
    }
  }
  return picked;
}
