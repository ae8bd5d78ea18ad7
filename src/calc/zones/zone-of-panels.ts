import type { SurfaceTable } from '../surfaces/surface-table';
import type { Zone } from './zone-result';

/** Index in the zones' list of the zone that drives each panel of a surface; -1 where none does. */
export function zoneOfPanels(table: SurfaceTable, zones: readonly Zone[]): Int32Array {
  const zoneOf = new Int32Array(table.count).fill(-1);
  zones.forEach((zone, index) => {
    if (zone.surfaceId !== table.surfaceId) return;
    for (const local of zonePanels(table, zone)) zoneOf[local] = index;
  });
  return zoneOf;
}

/** Panels of a surface inside a zone's rectangle, by their index in the table, column by column. */
export function zonePanels(table: SurfaceTable, zone: Zone): number[] {
  const found: number[] = [];
  const lastColumn = Math.min(table.columns, zone.firstColumn + zone.columns - 1);
  const lastRow = Math.min(table.rows, zone.firstRow + zone.rows - 1);
  for (let column = zone.firstColumn; column <= lastColumn; column++) {
    for (let row = zone.firstRow; row <= lastRow; row++) {
      const local = table.at[(column - 1) * table.rows + row - 1]!;
      if (local >= 0) found.push(local);
    }
  }
  return found;
}
