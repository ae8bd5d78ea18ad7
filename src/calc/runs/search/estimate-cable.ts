import type { WiringGrid } from '../wiring-grid';
import type { RunList } from './run-list';

/**
 * Cable of a wiring, to compare ways by: every home run drops from its entry to the row of the zone's lowest panel and goes
 * along it to the zone's middle column, where the breakouts are taken to stand; every jumper is one pitch. With returns the
 * last panels have a home run as well. Slack, lifts and the way to the rack are the same for all ways and left out.
 */
export function estimateCable(
  grid: WiringGrid,
  { order, start, ports }: Readonly<RunList>,
  returns: boolean,
  lowestRow: number,
): number {
  const { columns, rows } = grid;
  // Whole half-columns and rows are summed, so that a mirrored zone gives the same figure to the bit.
  let halfColumns = 0;
  let rowSteps = 0;
  let sideways = 0;
  for (let run = 0; run < ports; run++) {
    const from = start[run]!;
    const last = start[run + 1]! - 1;
    for (const end of returns ? [from, last] : [from]) {
      const row = order[end]! % rows;
      halfColumns += Math.abs(((order[end]! - row) / rows) * 2 - (columns - 1));
      rowSteps += row - lowestRow;
    }
    for (let at = from + 1; at <= last; at++) {
      const step = order[at]! - order[at - 1]!;
      if (step === rows || step === -rows) sideways++;
      else rowSteps++;
    }
  }
  return ((halfColumns + sideways * 2) * grid.columnPitchMm) / 2 + rowSteps * grid.rowPitchMm;
}
