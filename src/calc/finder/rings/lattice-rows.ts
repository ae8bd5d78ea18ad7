import { type BothWays, wholeLines } from './whole-lines';

/** Most rows of one band. */
const MOST_ROWS = 1000;

/** A wished height in whole rows of one height, both ways. */
export interface LatticeRows extends BothWays {
  readonly rowHeightMm: number;
}

/** A wished height in whole rows, both ways, for each way in which a panel stands (upright, on its side). */
export function latticeRows(heightMm: number, rowHeightsMm: readonly number[]): readonly LatticeRows[] {
  return [...new Set(rowHeightsMm)].map((rowHeightMm) => ({
    rowHeightMm,
    ...wholeLines(heightMm, rowHeightMm, MOST_ROWS),
  }));
}
