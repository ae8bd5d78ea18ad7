import type { WayOfWiring } from '../../../plan/hand-change';
import type { RunLimits, WiringGrid } from '../wiring-grid';
import { lowestRow } from './lowest-row';
import { measureRuns } from './measure-runs';
import { runPixels } from './run-pixels';
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
  const ports = start.length - 1;
  const pixels = new Float64Array(ports);
  for (let run = 0; run < ports; run++) pixels[run] = runPixels(grid, limits, order, start[run]!, start[run + 1]!);
  const runs = { order, start, pixels, ports };
  return {
    way,
    tooLarge,
    ...sortRuns(runs),
    ...measureRuns(grid, limits, runs, lowestRow(grid)),
  };
}
