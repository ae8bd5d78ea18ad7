import type { WiredZone } from './wire-zones';

/** True where a panel, by its number on the zone's surface, lies in the zone. */
export function zoneHolds({ zone, table }: Pick<WiredZone, 'zone' | 'table'>, panel: number): boolean {
  const column = table.column[panel]! - zone.firstColumn;
  const row = table.row[panel]! - zone.firstRow;
  return column >= 0 && column < zone.columns && row >= 0 && row < zone.rows;
}
