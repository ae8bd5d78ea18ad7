/** Footprints that reach less than this into each other touch. */
const TOUCH_MM = 1;

/**
 * True where two convex four-cornered footprints, the a-th and b-th of eight numbers each, reach into each other by more
 * than a millimetre in every direction. *Source: separating axes of convex shapes, any handbook of geometry.*
 */
export function footprintsOverlap(corners: Float64Array, a: number, b: number): boolean {
  return !hasGapAlongSides(corners, a, b) && !hasGapAlongSides(corners, b, a);
}

/** True where a side of the footprint `of` has all of the `other` beyond it. */
function hasGapAlongSides(corners: Float64Array, of: number, other: number): boolean {
  for (let k = 0; k < 4; k++) {
    const from = of * 8 + k * 2;
    const to = of * 8 + ((k + 1) % 4) * 2;
    const sideX = corners[to]! - corners[from]!;
    const sideY = corners[to + 1]! - corners[from + 1]!;
    const length = Math.sqrt(sideX * sideX + sideY * sideY);
    if (length === 0) continue;
    // Corners run anticlockwise in plan, so that the inside is on the left of each side.
    const normalX = -sideY / length;
    const normalY = sideX / length;
    let deepest = Number.NEGATIVE_INFINITY;
    for (let q = 0; q < 4; q++) {
      const offX = corners[other * 8 + q * 2]! - corners[from]!;
      const offY = corners[other * 8 + q * 2 + 1]! - corners[from + 1]!;
      deepest = Math.max(deepest, offX * normalX + offY * normalY);
    }
    if (deepest <= TOUCH_MM) return true;
  }
  return false;
}
