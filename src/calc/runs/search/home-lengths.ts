import type { WiringGrid } from '../wiring-grid';
import type { Region } from './region';

/** Cable from every cell of a region down to the lowest row and along it to the zone's middle column, as `CableEstimate` has it. */
export function homeLengths(grid: WiringGrid, region: Region): Float64Array {
  const middle = (grid.columns - 1) / 2;
  let lowest = Number.POSITIVE_INFINITY;
  for (const row of region.row) lowest = Math.min(lowest, row);
  return Float64Array.from(
    region.column,
    (column, cell) => Math.abs(column - middle) * grid.columnPitchMm + (region.row[cell]! - lowest) * grid.rowPitchMm,
  );
}
