import type { Lattice } from './lattice';

/** The places of a lattice from (firstI, firstJ) on; a mask over them has index i * rows + j, both counted from there. */
export interface LatticeWindow {
  readonly firstI: number;
  readonly firstJ: number;
  readonly columns: number;
  readonly rows: number;
}

/** A rectangle in u and v, half micrometres. */
export interface Bounds {
  readonly fromU: number;
  readonly toU: number;
  readonly fromV: number;
  readonly toV: number;
}

/** Whole quotient of two whole numbers, rounded down; no quotient is rounded before it is cut. */
const wholeQuotient = (dividend: number, divisor: number): number => {
  const rest = dividend % divisor;
  return (dividend - rest) / divisor - (rest < 0 ? 1 : 0);
};

/** The places that reach into the inside of a rectangle; touching its edge does not count. */
export function windowOver({ startU, startV, stepU, stepV }: Lattice, bounds: Bounds): LatticeWindow {
  const firstI = wholeQuotient(bounds.fromU - startU, stepU);
  const firstJ = wholeQuotient(bounds.fromV - startV, stepV);
  // The last place begins before the far edge: rounding up is rounding down with both signs turned.
  const lastI = -wholeQuotient(startU - bounds.toU, stepU) - 1;
  const lastJ = -wholeQuotient(startV - bounds.toV, stepV) - 1;
  return { firstI, firstJ, columns: Math.max(0, lastI - firstI + 1), rows: Math.max(0, lastJ - firstJ + 1) };
}
