import { type Block, foldStrands, stripsOf } from './fold-strands';
import { lineUp } from './line-up-runs';
import { measureWiring } from './measure-wiring';
import { StrandCutter } from './strand-cutter';
import type { ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** Panels laid out in all while bands are compared. */
const PANELS_LAID_OUT = 3_000_000;

interface Band {
  readonly strands: readonly (readonly number[])[];
  readonly cuts: readonly (readonly number[])[];
  readonly high: number;
  readonly runs: number;
}

/**
 * Cuts a zone into bands of rows, each folded in strips of the width that suits its height, so that entries above reach are
 * fewest and then runs: what columns, folds, splits and rows are single cases of. Null where the zone is too large to compare
 * all bands.
 */
export function stackBands(zone: ZoneToWire): ZoneWiring | null {
  const { grid, region, panelsAtMost } = zone;
  const { rows, columns } = grid;
  const tallest = Math.min(rows, panelsAtMost);
  if (region.size === 0 || rows * tallest * columns * tallest > PANELS_LAID_OUT) return null;
  const cutter = new StrandCutter(region);
  // Best stack of all rows from each on: ends above reach, runs, and the band it begins with.
  const best: { high: number; runs: number; bands: Band[] }[] = Array.from({ length: rows + 1 });
  best[rows] = { high: 0, runs: 0, bands: [] };
  for (let row = rows - 1; row >= 0; row--) {
    let found: { high: number; runs: number; band: Band; end: number } | null = null;
    for (let end = row + 1; end <= Math.min(rows, row + tallest); end++) {
      const above = best[end]!;
      const band = bestBand(zone, cutter, row, end);
      const high = band.high + above.high;
      const runs = band.runs + above.runs;
      if (found === null || (high - found.high || runs - found.runs) <= 0) found = { high, runs, band, end };
    }
    const { high, runs, band, end } = found!;
    best[row] = { high, runs, bands: [band, ...best[end]!.bands] };
  }
  const { bands } = best[0]!;
  const runs = lineUp(
    zone,
    bands.flatMap(({ strands }) => strands),
    bands.flatMap(({ cuts }) => cuts),
  );
  return measureWiring(grid, zone.limits, { kind: 'free' }, runs, zone.tooLarge);
}

/** The band of rows `from` .. `end - 1` in strips as wide as fit or a little narrower, or as one strip. */
function bestBand(zone: ZoneToWire, cutter: StrandCutter, from: number, end: number): Band {
  const { grid, cellAt, region, panelsAtMost } = zone;
  const block: Block = { columnFirst: 0, columnLast: grid.columns - 1, rowFirst: from, rowLast: end - 1 };
  const widest = Math.min(grid.columns, Math.max(1, Math.floor(panelsAtMost / (end - from))));
  let best: Band | null = null;
  for (const wide of new Set([widest, Math.max(1, widest - 1), grid.columns])) {
    const strands = stripsOf(block, wide, 'columns', false).flatMap((strip) =>
      foldStrands(grid, cellAt, strip, end - from > 1 ? 'columns' : 'rows', false),
    );
    const cuts = strands.map((strand) => cutter.cut(strand).even);
    let high = 0;
    let runs = 0;
    strands.forEach((strand, i) => {
      runs += cuts[i]!.length - 1;
      high += cutter.highOf(strand, cuts[i]!);
    });
    if (best === null || (high - best.high || runs - best.runs) < 0) best = { strands, cuts, high, runs };
  }
  void region;
  return best!;
}
