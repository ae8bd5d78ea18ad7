import type { WiringGrid } from '../wiring-grid';
import { mirrorFigure } from './figure-walk';
import { mirrorPlace } from './mirror-grid';
import { sortRuns } from './sort-runs';
import { WiringLater } from './wiring-later';
import type { ZoneWiring } from './zone-wiring';

/** The mirror image of a wiring, on `grid`, whose mirror image it was made for. It measures the same but for its figures. */
export function mirrorWiring(grid: WiringGrid, wiring: ZoneWiring): ZoneWiring {
  const turn = (places: Int32Array) => places.map((place) => mirrorPlace(grid.columns, grid.rows, place));
  const figureCodes = wiring.figureCodes.map(mirrorFigure).sort((a, b) => a - b);
  return new WiringLater(wiring.way, turn(wiring.tooLarge).sort(), { ...wiring, figureCodes }, () =>
    sortRuns({ ...wiring, order: turn(wiring.order), start: wiring.start, pixels: wiring.pixels }),
  );
}
