import type { ZoneRunsDraft } from '../../../../src/calc/runs/hand-changes/zone-runs';
import { zoneGrid } from '../../../../src/calc/runs/zone-grid';
import { plainSurface, plainType } from '../../zones/plain-surface';

/** A zone of 3 columns x 4 rows, places 0..3, 4..7, 8..11, with the runs given; a port takes six panels of 100 x 100. */
export function smallZone(...runs: number[][]): ZoneRunsDraft {
  const wall = plainSurface({ columns: 3, bands: [{ type: plainType(100), rows: 4 }] });
  const { grid } = zoneGrid(wall, { firstColumn: 1, columns: 3, firstRow: 1, rows: 4 }, 'bottom');
  return { grid, limits: { usablePixels: 60_000, panelsMost: 100, counting: 'panels', reachMm: 2100 }, runs };
}
