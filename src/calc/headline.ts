import type { Evaluation, Headline } from './evaluation';

/** The figures that lead: shape of the first wall, counts and sums of the stage. */
export function computeHeadline(
  results: Pick<
    Evaluation,
    'surfaces' | 'walls' | 'picture' | 'zones' | 'runs' | 'power' | 'heat' | 'masses' | 'materials'
  >,
): Headline {
  const wall = results.walls.results.walls[0];
  const stands = wall !== undefined && wall.table.count > 0;
  const runs = results.runs.results;
  const power = results.power.results;
  return {
    panels: results.surfaces.total,
    columns: wall?.columns ?? 0,
    rows: wall?.rows ?? 0,
    insideDiameterMm: wall?.insideDiameterMm ?? null,
    openingMm: wall?.openingMm ?? null,
    wallHeightMm: stands ? wall.heightMm : null,
    pixels: results.picture.results.pixels,
    processors: results.zones.results.processors,
    breakouts: runs.breakouts,
    portsUsed: runs.portsUsed,
    portsLeast: runs.portsLeast,
    panelsPerPortMin: runs.panelsPerPortMin,
    panelsPerPortMax: runs.panelsPerPortMax,
    fullestPortShare: runs.fullestPortShare,
    circuits: power.circuits.length,
    worstLegA: power.worstLegA,
    neutralA: power.neutralA,
    powerMaxW: power.maxW,
    heatTons: results.heat.results.fullWhiteTons,
    massKg: results.masses.results.totalKg,
    priceTotal: results.materials.results.priceTotal,
  };
}
