import type { SurfaceTable } from '../calc/surfaces/surface-table';

/**
 * Cost of a cut between a column of a surface and the next: 0 at a zone's border, 1 inside a zone, 3 across a chain.
 * `zoneOf` by the panel's index in the table, `chainOf` by its number through all surfaces, of which `offset` is the first here.
 */
export function cutCosts(
  table: SurfaceTable,
  offset: number,
  zoneOf: Int32Array,
  chainOf: Int32Array,
): (column: number) => number {
  return (column) => {
    let cost = 0;
    for (let row = 0; row < table.rows; row++) {
      const a = table.at[(column - 1) * table.rows + row]!;
      const b = table.at[column * table.rows + row] ?? -1;
      if (a < 0 || b < 0) continue;
      if (chainOf[offset + a] === chainOf[offset + b] && chainOf[offset + a]! >= 0) return 3;
      if (zoneOf[a] === zoneOf[b]) cost = 1;
    }
    return cost;
  };
}
