import type { Chains } from './chains';
import { PathCover } from './path-cover';
import type { Region } from './region';

const WARM = 0.5;
const COLD = 0.08;

/**
 * Takes bends out of a cover that fits, without overloading a chain, raising an end above reach or changing how many chains
 * there are: straight runs are wired faster and more of them come out alike. Cools down over `steps` moves.
 */
export function straighten(region: Region, start: Chains, steps: number, randomBits: () => number): Chains {
  const cover = new PathCover(region, start);
  const { neighbours } = region;
  let best = start;
  let bends = 0;
  let bestBends = 0;
  for (let step = 0; step < steps; step++) {
    const bits = randomBits();
    const chain = (bits >>> 6) % cover.chains;
    const from = (bits & 1) === 0 ? cover.endA[chain]! : cover.endB[chain]!;
    const to = neighbours[from * 4 + ((bits >>> 1) & 3)]!;
    if (to < 0 || !cover.propose(from, to, (bits & 8) !== 0, false)) continue;
    if (cover.excessChange > 0 || cover.highChange > 0) continue;
    const temperature = WARM + ((COLD - WARM) * step) / steps;
    if (cover.bendsChange > 0 && randomBits() >= 4294967296 * Math.exp(-cover.bendsChange / temperature)) continue;
    bends += cover.bendsChange;
    cover.commit();
    if (bends < bestBends) {
      bestBends = bends;
      best = cover.read();
    }
  }
  return best;
}
