import { compareMerit } from './compare-merit';
import { leastRuns } from './least-runs';
import { regularWirings } from './search/regular-wirings';
import { zoneKey } from './zone-key';
import { createZoneSolver, type SolveZone } from './zone-solver';

/** A solver of zones that remembers: the regular way of most merit, beside the others and the least possible. */
export function solveZones(): SolveZone {
  return createZoneSolver((grid, limits, terms) => {
    const ways = regularWirings(grid, limits).sort(compareMerit(terms));
    return { chosen: ways[0]!, ways, least: leastRuns(grid, limits) };
  }, zoneKey);
}
