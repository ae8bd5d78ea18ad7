/** Most panels that the schema lets into a plan: what a circuit takes of panels that draw nothing. */
const panelsOfAnyPlan = 250_000;

/** Amperes that differ by less than this share of the limit count as equal, so that an exact multiple is not lost to rounding. */
export const ampsTolerance = 1e-9;

export function fitsWithin(amps: number, limitA: number): boolean {
  return amps <= limitA * (1 + ampsTolerance);
}

/** Whole panels of `currentA` each within `limitA`. */
export function panelsWithin(limitA: number, currentA: number): number {
  if (currentA <= 0) return panelsOfAnyPlan;
  return Math.min(panelsOfAnyPlan, Math.floor(limitA / currentA + ampsTolerance));
}
