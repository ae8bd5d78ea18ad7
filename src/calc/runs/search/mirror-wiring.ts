import type { RunLimits, WiringGrid } from '../wiring-grid';
import { measureWiring } from './measure-wiring';
import { mirrorPlace } from './mirror-grid';
import type { ZoneWiring } from './zone-wiring';

/** The mirror image of a wiring, on `grid`, whose mirror image it was made for. */
export function mirrorWiring(grid: WiringGrid, limits: RunLimits, wiring: ZoneWiring): ZoneWiring {
  const turn = (places: Int32Array) => places.map((place) => mirrorPlace(grid.columns, grid.rows, place));
  const runs = { order: turn(wiring.order), start: wiring.start };
  return measureWiring(grid, limits, wiring.way, runs, turn(wiring.tooLarge).sort());
}
