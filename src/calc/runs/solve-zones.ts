import { regularWirings } from './search/regular-wirings';
import type { RunLimits, WiringGrid } from './wiring-grid';
import { createZoneSolver, type SolveZone, type WiringTerms, type ZoneAnswer } from './zone-solver';

function choose(grid: WiringGrid, limits: RunLimits, terms: WiringTerms): ZoneAnswer {
  const ways = regularWirings(grid, limits);
  const merit = (w: ZoneAnswer['chosen']) => [
    w.entriesOutOfReach,
    Math.max(0, w.ports - terms.portsThere),
    w.figures,
    w.ports,
  ];
  const sorted = [...ways].sort((a, b) => {
    const x = merit(a);
    const y = merit(b);
    return x.map((v, i) => v - y[i]!).find((d) => d !== 0) ?? 0;
  });
  const pixels = grid.present.reduce((sum, on, i) => sum + (on ? grid.pixelWidth[i]! * grid.pixelHeight[i]! : 0), 0);
  return { chosen: sorted[0]!, ways, least: Math.ceil(pixels / Math.max(1, limits.usablePixels)) };
}
const keyOf = (grid: WiringGrid, limits: RunLimits) =>
  JSON.stringify([
    grid.columns,
    grid.rows,
    [...grid.present],
    [...grid.pixelLeft],
    [...grid.pixelTop],
    [...grid.entryHeightMm],
    limits,
  ]);
export function solveZones(): SolveZone {
  return createZoneSolver(choose, keyOf);
}
