/**
 * Exact sign of (b - a) x (c - a) for whole coordinates up to 2^52: 1 where a, b, c turn anticlockwise, 0 on one line,
 * -1 clockwise. Floating point decides unless its rounding could change the sign.
 */
export function turnSign(aU: number, aV: number, bU: number, bV: number, cU: number, cV: number): -1 | 0 | 1 {
  const one = (bU - aU) * (cV - aV);
  const other = (bV - aV) * (cU - aU);
  const difference = one - other;
  if (Math.abs(difference) > 4 * Number.EPSILON * (Math.abs(one) + Math.abs(other))) return difference > 0 ? 1 : -1;
  const exact = BigInt(bU - aU) * BigInt(cV - aV) - BigInt(bV - aV) * BigInt(cU - aU);
  return exact > 0n ? 1 : exact < 0n ? -1 : 0;
}
