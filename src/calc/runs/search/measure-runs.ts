import type { RunLimits, WiringGrid } from '../wiring-grid';
import { estimateCable } from './estimate-cable';
import { figureCode } from './figure-code';
import type { RunList } from './run-list';
import { runPixels } from './run-pixels';
import type { WiringMeasures } from './zone-wiring';

/** Measures runs of places, each from its entry on. `lowestRow` is the row of the zone's lowest panel. */
export function measureRuns(
  grid: WiringGrid,
  limits: RunLimits,
  runs: Readonly<RunList>,
  lowestRow: number,
): WiringMeasures {
  const { order, start, ports } = runs;
  const { entryHeightMm } = grid;
  const returns = limits.lastObeysReach === true;
  const figureCodes: number[] = [];
  let fewestPanels = ports === 0 ? 0 : Number.POSITIVE_INFINITY;
  let mostPanels = 0;
  let fullestPixels = 0;
  let entriesOutOfReach = 0;
  let highestEntryMm: number | null = null;
  for (let run = 0; run < ports; run++) {
    const from = start[run]!;
    const to = start[run + 1]!;
    fullestPixels = Math.max(fullestPixels, runPixels(grid, limits, order, from, to));
    fewestPanels = Math.min(fewestPanels, to - from);
    mostPanels = Math.max(mostPanels, to - from);
    const entryMm = entryHeightMm[order[from]!]!;
    highestEntryMm = Math.max(highestEntryMm ?? entryMm, entryMm);
    if (entryMm > limits.reachMm) entriesOutOfReach++;
    if (returns && to - from > 1 && entryHeightMm[order[to - 1]!]! > limits.reachMm) entriesOutOfReach++;
    const code = figureCode(grid.rows, order, from, to);
    if (!figureCodes.includes(code)) figureCodes.push(code);
  }
  return {
    ports,
    fewestPanels,
    mostPanels,
    fullestPixels,
    fullestShare: limits.usablePixels > 0 ? fullestPixels / limits.usablePixels : null,
    entriesOutOfReach,
    highestEntryMm,
    figures: figureCodes.length,
    figureCodes: figureCodes.sort((a, b) => a - b),
    cableMm: estimateCable(grid, runs, returns, lowestRow),
  };
}
