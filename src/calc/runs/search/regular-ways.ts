import type { RegularWay } from './regular-way';
import type { ZoneToWire } from './zone-to-wire';

/** Most columns folded together and most rows split off that are tried: beyond, ways repeat what narrower ones give. */
const WIDEST = 64;

/**
 * The regular ways worth trying on a zone: columns, rows, every number of columns folded together, and above every row that
 * an entry can stand in single columns with every fold below that a port can fill (and one fold over the whole width).
 */
export function* regularWays(zone: ZoneToWire): Generator<RegularWay> {
  const { grid, panelsAtMost } = zone;
  yield { kind: 'columns' };
  yield { kind: 'rows' };
  const entryRows = rowsWithEntry(zone);
  for (let aboveRow = 1; aboveRow < grid.rows && aboveRow <= WIDEST; aboveRow++) {
    if (entryRows[aboveRow] === 0) continue;
    // Narrowest first; the widest fold that is not the whole width begins its last column on a port that is not yet full.
    const widest = Math.min(grid.columns, Math.ceil(panelsAtMost / aboveRow));
    for (let wide = 1; wide <= widest; wide++) yield { kind: 'split', aboveRow, wide };
    if (widest < grid.columns) yield { kind: 'split', aboveRow, wide: Math.min(1000, grid.columns) };
  }
  for (let wide = 2; wide <= Math.min(grid.columns, WIDEST); wide++) yield { kind: 'folded', wide };
  if (grid.columns > WIDEST) yield { kind: 'folded', wide: Math.min(1000, grid.columns) };
}

function rowsWithEntry(zone: ZoneToWire): Uint8Array {
  const { region } = zone;
  const rows = new Uint8Array(zone.grid.rows);
  for (let cell = 0; cell < region.size; cell++) if (region.outOfReach[cell] === 0) rows[region.row[cell]!] = 1;
  return rows;
}
