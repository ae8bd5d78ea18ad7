import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { Zone } from '../calc/zones/zone-result';

/** Number through all surfaces of the first panel of a zone, column by column from the left, from the floor up; null where it has none. */
export function panelOfZone({ surfaces, offsets }: SurfaceSet, zone: Zone): number | null {
  const s = surfaces.findIndex((table) => table.surfaceId === zone.surfaceId);
  const table = surfaces[s];
  if (table === undefined) return null;
  for (let column = zone.firstColumn; column < zone.firstColumn + zone.columns; column++) {
    for (let row = zone.firstRow; row < zone.firstRow + zone.rows; row++) {
      const local = table.at[(column - 1) * table.rows + row - 1] ?? -1;
      if (local >= 0) return offsets[s]! + local;
    }
  }
  return null;
}
