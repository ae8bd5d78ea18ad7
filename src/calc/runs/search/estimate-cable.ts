import type { WiringGrid } from '../wiring-grid';

/**
 * Cable of a wiring, to compare ways by: every home run drops from its entry to the row of the zone's lowest panel and goes
 * along it to the zone's middle column, where the breakouts are taken to stand; every jumper is one pitch. With returns the
 * last panels have a home run as well. Slack, lifts and the way to the rack are the same for all ways and left out.
 */
export function estimateCable(grid: WiringGrid, order: Int32Array, start: Int32Array, returns: boolean): number {
  const { columns, rows } = grid;
  let lowest = rows;
  for (const place of order) lowest = Math.min(lowest, place % rows);
  // Whole half-columns and rows are summed, so that a mirrored zone gives the same figure to the bit.
  let halfColumns = 0;
  let rowSteps = 0;
  const home = (place: number) => {
    const row = place % rows;
    halfColumns += Math.abs((place - row) * 2 - (columns - 1) * rows) / rows;
    rowSteps += row - lowest;
  };
  for (let run = 0; run + 1 < start.length; run++) {
    home(order[start[run]!]!);
    if (returns) home(order[start[run + 1]! - 1]!);
    for (let at = start[run]! + 1; at < start[run + 1]!; at++) {
      if (Math.abs(order[at]! - order[at - 1]!) === 1 && rows > 1) rowSteps++;
      else halfColumns += 2;
    }
  }
  return (halfColumns * grid.columnPitchMm) / 2 + rowSteps * grid.rowPitchMm;
}
