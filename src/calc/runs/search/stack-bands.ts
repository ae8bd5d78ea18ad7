import { measureRuns } from './measure-runs';
import { sortRuns } from './sort-runs';
import { type Band, WayLayout } from './way-layout';
import type { ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** Panels laid out in all while bands are compared. */
const PANELS_LAID_OUT = 3_000_000;

interface CountedBand extends Band {
  readonly high: number;
  readonly runs: number;
}

/**
 * Cuts a zone into bands of rows, each folded in strips of the width that suits its height, so that entries above reach are
 * fewest and then runs: what columns, folds, splits and rows are single cases of. Null where the zone is too large to compare
 * all bands.
 */
export function stackBands(zone: ZoneToWire): ZoneWiring | null {
  const { grid, limits, region, panelsAtMost, tooLarge } = zone;
  const { rows, columns } = grid;
  const tallest = Math.min(rows, panelsAtMost);
  if (region.size === 0 || rows * tallest * columns * tallest > PANELS_LAID_OUT) return null;
  const layout = new WayLayout(zone);
  // Best stack of all rows from each on: ends above reach, runs, and its bands.
  const best: { high: number; runs: number; bands: readonly Band[] }[] = Array.from({ length: rows + 1 });
  best[rows] = { high: 0, runs: 0, bands: [] };
  for (let row = rows - 1; row >= 0; row--) {
    let found: { high: number; runs: number; band: Band } | null = null;
    for (let end = row + 1; end <= Math.min(rows, row + tallest); end++) {
      const above = best[end]!;
      const band = bestBand(zone, layout, row, end);
      const high = band.high + above.high;
      const runs = band.runs + above.runs;
      if (found === null || (high - found.high || runs - found.runs) <= 0) found = { high, runs, band };
    }
    const { high, runs, band } = found!;
    best[row] = { high, runs, bands: [band, ...best[band.end]!.bands] };
  }
  layout.layOutBands(best[0]!.bands, false);
  const runs = layout.runsOf('even');
  return {
    way: { kind: 'free' },
    tooLarge,
    ...sortRuns(runs),
    ...measureRuns(grid, limits, runs, zone.lowestRow),
  };
}

/** The band of rows `from` .. `end - 1` in strips as wide as fit or a little narrower, or as one strip. */
function bestBand({ grid, panelsAtMost }: ZoneToWire, layout: WayLayout, from: number, end: number): CountedBand {
  const widest = Math.min(grid.columns, Math.max(1, Math.floor(panelsAtMost / (end - from))));
  let best: CountedBand | null = null;
  for (const wide of new Set([widest, Math.max(1, widest - 1), grid.columns])) {
    layout.layOutBands([{ from, end, wide }], false);
    const { high, runs } = layout.countOf('even');
    if (best === null || (high - best.high || runs - best.runs) < 0) best = { from, end, wide, high, runs };
  }
  return best!;
}
