/** The place on the columns' faces that is nearest to a point of the plan. */
export interface NearestFace {
  readonly column: number;
  readonly xMm: number;
  readonly yMm: number;
  readonly distanceMm: number;
}

/** `frontMm` holds x0 y0 x1 y1 a column; null for no column. Column counts from 0. */
export function nearestFace(frontMm: Float64Array, xMm: number, yMm: number): NearestFace | null {
  let best: NearestFace | null = null;
  let bestSquare = Number.POSITIVE_INFINITY;
  for (let c = 0; c * 4 < frontMm.length; c++) {
    const x0 = frontMm[c * 4]!;
    const y0 = frontMm[c * 4 + 1]!;
    const dx = frontMm[c * 4 + 2]! - x0;
    const dy = frontMm[c * 4 + 3]! - y0;
    const along = ((xMm - x0) * dx + (yMm - y0) * dy) / (dx * dx + dy * dy);
    const t = Math.min(1, Math.max(0, along));
    const x = x0 + t * dx;
    const y = y0 + t * dy;
    const square = (xMm - x) ** 2 + (yMm - y) ** 2;
    if (square < bestSquare) {
      bestSquare = square;
      best = { column: c, xMm: x, yMm: y, distanceMm: Math.sqrt(square) };
    }
  }
  return best;
}
