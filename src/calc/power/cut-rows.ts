import { fitsWithin } from './panels-within';

/** Rows of one surface as a column of circuits sees them, lowest first. */
export interface RowLoads {
  /** Amperes of one panel of the row; 0 where the row is empty. */
  readonly currentA: Float64Array;
  /** Amperes that a circuit with a panel of this row may carry. */
  readonly limitA: Float64Array;
  /** Circuits that rows `from .. to - 1` of all columns take, whole columns side by side, at most `limitA` each. */
  readonly circuits: (from: number, to: number, limitA: number) => number;
}

/** Rows looked at for one level of a surface that does not fit on one: keeps the search short on absurdly tall surfaces. */
const tallestLevel = 200;

type Merit = readonly number[];

function isBetter(a: Merit, b: Merit | undefined): boolean {
  if (b === undefined) return true;
  for (let i = 0; i < a.length; i++) {
    if (a[i] !== b[i]) return a[i]! < b[i]!;
  }
  return false;
}

/**
 * Cuts the rows of a surface into levels, one above the other; within a level circuits take whole columns, as many side by side
 * as fit. Returns the first row of each level from 0, lowest first; `[0]` where whole columns fit.
 * `first` 'levels': the fewest levels, then the fewest circuits; 'circuits': the other way round. Then the most even heights,
 * then the lowest entries (short levels below). A row that does not fit on a circuit alone is a level of its own.
 */
export function cutRows(rows: RowLoads, first: 'levels' | 'circuits'): number[] {
  const count = rows.currentA.length;
  const total = rows.currentA.reduce((sum, a) => sum + a, 0);
  const least = rows.limitA.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  if (count === 0 || (first === 'levels' && fitsWithin(total, least))) return [0];

  const best: (Merit | undefined)[] = [[0, 0, 0, 0]];
  const cutAt = new Int32Array(count + 1);
  for (let end = 1; end <= count; end++) {
    let currentA = 0;
    let limitA = Number.POSITIVE_INFINITY;
    for (let from = end - 1; from >= Math.max(0, end - tallestLevel); from--) {
      currentA += rows.currentA[from]!;
      limitA = Math.min(limitA, rows.limitA[from]!);
      if (from < end - 1 && !fitsWithin(currentA, limitA)) break;
      const below = best[from]!;
      const circuits = rows.circuits(from, end, limitA);
      const levelsAndCircuits =
        first === 'levels' ? [below[0]! + 1, below[1]! + circuits] : [below[0]! + circuits, below[1]! + 1];
      const merit = [...levelsAndCircuits, below[2]! + (end - from) ** 2, below[3]! + from];
      if (isBetter(merit, best[end])) {
        best[end] = merit;
        cutAt[end] = from;
      }
    }
  }
  const levels: number[] = [];
  for (let end = count; end > 0; end = cutAt[end]!) levels.unshift(cutAt[end]!);
  return levels;
}
