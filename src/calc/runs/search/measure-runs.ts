import type { RunLimits, WiringGrid } from '../wiring-grid';
import { CableEstimate } from './cable-estimate';
import { FigureWalk } from './figure-walk';
import type { RunList } from './run-list';
import type { WiringMeasures } from './zone-wiring';

/** Measures runs of places, each from its entry on. `lowestRow` is the row of the zone's lowest panel. */
export function measureRuns(
  grid: WiringGrid,
  limits: RunLimits,
  runs: Readonly<RunList>,
  lowestRow: number,
): WiringMeasures {
  const { order, start, pixels, ports } = runs;
  const { entryHeightMm } = grid;
  const returns = limits.returns === true;
  const figureCodes: number[] = [];
  const figure = new FigureWalk();
  const cable = new CableEstimate(grid, lowestRow);
  let fewestPanels = ports === 0 ? 0 : Number.POSITIVE_INFINITY;
  let mostPanels = 0;
  let fullestPixels = 0;
  let entriesOutOfReach = 0;
  let highestEntryMm: number | null = null;
  for (let run = 0; run < ports; run++) {
    const from = start[run]!;
    const to = start[run + 1]!;
    const panels = to - from;
    const entryMm = entryHeightMm[order[from]!]!;
    fullestPixels = Math.max(fullestPixels, pixels[run]!);
    fewestPanels = Math.min(fewestPanels, panels);
    mostPanels = Math.max(mostPanels, panels);
    highestEntryMm = Math.max(highestEntryMm ?? entryMm, entryMm);
    if (entryMm > limits.reachMm) entriesOutOfReach++;
    figure.walk(grid.rows, order, from, to);
    if (!figureCodes.includes(figure.code)) figureCodes.push(figure.code);
    cable.addHome(order[from]!);
    cable.addJumpers(figure.sideways, panels - 1 - figure.sideways);
    if (returns) cable.addHome(order[to - 1]!);
    if (limits.lastObeysReach === true && panels > 1 && entryHeightMm[order[to - 1]!]! > limits.reachMm)
      entriesOutOfReach++;
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
    cableMm: cable.totalMm(),
  };
}
