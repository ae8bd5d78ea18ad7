import type { WayOfWiring } from '../../../plan/hand-change';
import type { RunLimits, WiringGrid } from '../wiring-grid';
import { lowestRow } from './lowest-row';
import { measureRuns } from './measure-runs';
import { sortRuns } from './sort-runs';
import type { WiringRuns, ZoneWiring } from './zone-wiring';

/** Measures runs (`order` by places, each from its entry on) that hold all panels of a zone. */
export function measureWiring(
  grid: WiringGrid,
  limits: RunLimits,
  way: WayOfWiring,
  { order, start }: Pick<WiringRuns, 'order' | 'start'>,
  tooLarge: Int32Array,
): ZoneWiring {
  const runs = { order, start, ports: start.length - 1 };
  return {
    way,
    tooLarge,
    ...sortRuns(grid, limits, runs),
    ...measureRuns(grid, limits, runs, lowestRow(grid)),
  };
}
