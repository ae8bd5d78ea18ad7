import { mostOnARun } from '../../../../src/calc/runs/search/bounds/least-chains';
import { leastHigh } from '../../../../src/calc/runs/search/bounds/least-high';
import { chooseWiring } from '../../../../src/calc/runs/search/choose-wiring';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import type { RunLimits } from '../../../../src/calc/runs/wiring-grid';
import { aPort, block } from './block-of-panels';

export interface RectangleSample {
  readonly seed: number;
  readonly many: number;
  readonly counting: RunLimits['counting'];
  readonly reachMm: number;
}

/**
 * Of random rectangles up to 40 x 20 with ports of 4 to 20 panels, fewest ports first: for how many the wiring has no more
 * ends above reach and ports than are proved to be needed, and the ports that all have and need at least.
 */
export function boundShare({ seed, many, counting, reachMm }: RectangleSample) {
  const randomBits = createRandomBits(seed);
  const upTo = (most: number) => 1 + ((randomBits() >>> 8) % most);
  let reached = 0;
  let ports = 0;
  let portsAtLeast = 0;
  for (let i = 0; i < many; i++) {
    const grid = block(upTo(40), upTo(20));
    const limits = aPort(3 + upTo(17), counting, reachMm);
    const { region } = makeReady(grid, limits);
    const { chosen, least } = chooseWiring(grid, limits, { priority: 'fewest-ports', portsThere: 1000 });
    if (chosen.entriesOutOfReach === leastHigh(region, mostOnARun(region)) && chosen.ports === least) reached++;
    ports += chosen.ports;
    portsAtLeast += least;
  }
  return { share: reached / many, ports, portsAtLeast };
}
