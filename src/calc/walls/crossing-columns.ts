import { footprintsOverlap } from './footprints-overlap';

/** Two columns, from 0, whose footprints reach into each other. */
export interface Crossing {
  readonly column: number;
  readonly earlier: number;
}

export interface Crossings {
  readonly crossings: readonly Crossing[];
  /** False where columns much narrower than deep lie so thick that the search was given up. */
  readonly complete: boolean;
}

/** Pairs of columns that are looked at before the search is given up; columns as they are built need ten each. */
const MOST_PAIRS = 4_000_000;

/**
 * Columns of a path that stand in an earlier column that is not their neighbour, at most `most` of them. Footprints are
 * hashed by a grid as wide as the longest of them, so that each looks at those near it only: n log n or better.
 */
export function crossingColumns(corners: Float64Array, most: number): Crossings {
  const columns = corners.length / 8;
  const cellMm = longestDiagonal(corners) || 1;
  const firstInCell = new Map<number, number>();
  const nextInCell = new Int32Array(columns).fill(-1);
  const found: Crossing[] = [];
  let pairs = 0;
  for (let c = 0; c < columns && found.length < most; c++) {
    if (pairs > MOST_PAIRS) return { crossings: found, complete: false };
    const across = Math.floor((middle(corners, c, 0) - corners[0]!) / cellMm);
    const up = Math.floor((middle(corners, c, 1) - corners[1]!) / cellMm);
    const near = earlierNear(corners, c, across, up, firstInCell, nextInCell);
    pairs += near.pairs;
    if (near.earlier >= 0) found.push({ column: c, earlier: near.earlier });
    const cell = cellKey(across, up);
    nextInCell[c] = firstInCell.get(cell) ?? -1;
    firstInCell.set(cell, c);
  }
  return { crossings: found, complete: true };
}

/** An earlier column, not the neighbour, that column c stands in (-1 for none), and how many were looked at. */
function earlierNear(
  corners: Float64Array,
  c: number,
  across: number,
  up: number,
  firstInCell: ReadonlyMap<number, number>,
  nextInCell: Int32Array,
): { readonly earlier: number; readonly pairs: number } {
  let pairs = 0;
  for (let i = across - 1; i <= across + 1; i++) {
    for (let j = up - 1; j <= up + 1; j++) {
      for (let e = firstInCell.get(cellKey(i, j)) ?? -1; e >= 0; e = nextInCell[e]!) {
        pairs++;
        if (e < c - 1 && footprintsOverlap(corners, c, e)) return { earlier: e, pairs };
      }
    }
  }
  return { earlier: -1, pairs };
}

const cellKey = (across: number, up: number): number => (across + 2 ** 24) * 2 ** 25 + (up + 2 ** 24);

const middle = (corners: Float64Array, c: number, axis: 0 | 1): number =>
  (corners[c * 8 + axis]! + corners[c * 8 + 2 + axis]! + corners[c * 8 + 4 + axis]! + corners[c * 8 + 6 + axis]!) / 4;

function longestDiagonal(corners: Float64Array): number {
  let longest = 0;
  for (let c = 0; c < corners.length; c += 8) {
    for (const [a, b] of [
      [0, 4],
      [2, 6],
    ] as const) {
      const x = corners[c + b]! - corners[c + a]!;
      const y = corners[c + b + 1]! - corners[c + a + 1]!;
      longest = Math.max(longest, x * x + y * y);
    }
  }
  return Math.sqrt(longest);
}
