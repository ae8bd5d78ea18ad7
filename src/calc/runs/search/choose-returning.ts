import type { RunLimits, WiringGrid } from '../wiring-grid';
import { mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import { chooseWiring, type WiringChoice, type WiringTerms } from './choose-wiring';
import { makeReady } from './zone-to-wire';

/**
 * Chooses the wiring of a zone whose runs may return. Where some wiring is known that lets every return drop from within reach
 * on the ports there are, it is one of those; else reach is asked of the entries alone, and checks count the drops from above.
 */
export function chooseReturning(grid: WiringGrid, limits: RunLimits, terms: WiringTerms): WiringChoice {
  if (limits.returns === true && mayKeepReach(grid, limits)) {
    const found = chooseWiring(grid, { ...limits, lastObeysReach: true }, terms);
    if (found.chosen.entriesOutOfReach === 0 && found.chosen.ports <= terms.portsThere) return found;
  }
  return chooseWiring(grid, limits, terms);
}

/** False where it is proved that some end of a run stands above reach. */
function mayKeepReach(grid: WiringGrid, limits: RunLimits): boolean {
  const { region, tooLarge } = makeReady(grid, { ...limits, lastObeysReach: true });
  if (region.size === 0 || tooLarge.length > 0) return false;
  return leastHigh(region, mostOnARun(region)) === 0;
}
