import type { WiringGrid } from '../wiring-grid';

/**
 * Cable of a wiring, to compare ways by, run by run: every home run drops from its entry to the row of the zone's lowest panel
 * and goes along it to the zone's middle column, where the breakouts are taken to stand; every jumper is one pitch. With
 * returns the last panels have a home run as well. Slack, lifts and the way to the rack are the same for all ways and left out.
 */
export class CableEstimate {
  // Whole half-columns and rows are summed, so that a mirrored zone gives the same figure to the bit.
  private halfColumns = 0;
  private rowSteps = 0;
  private readonly grid: WiringGrid;
  private readonly lowestRow: number;

  constructor(grid: WiringGrid, lowestRow: number) {
    this.grid = grid;
    this.lowestRow = lowestRow;
  }

  addHome(place: number): void {
    const { columns, rows } = this.grid;
    const row = place % rows;
    this.halfColumns += Math.abs(((place - row) / rows) * 2 - (columns - 1));
    this.rowSteps += row - this.lowestRow;
  }

  /** Jumpers to the side and up or down. */
  addJumpers(sideways: number, upright: number): void {
    this.halfColumns += sideways * 2;
    this.rowSteps += upright;
  }

  totalMm(): number {
    return (this.halfColumns * this.grid.columnPitchMm) / 2 + this.rowSteps * this.grid.rowPitchMm;
  }
}
